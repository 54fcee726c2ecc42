package hearthcloth.draw.letters;

import java.util.HashMap;
import java.util.Map;

/**
 * How wide each letter of the typeface is, in thousandths of the em, as a table made from the font files (which lie beside it,
 * and to which a test holds it), so that words are measured without reading a font, in a browser too.
 */
final class LetterWidths {

    /** Pairs of a first letter and how many follow one another, in base 36. */
    private static final String RUNS =
            "w 2n 4g 6a au 1 ay 1 b1 4 b6 3 ba 2 be 2 bi 1 bk 2 bz 3 c7 1 cf 5 ct h de 6 dm 2 dq 3 dw 2 dz b ec "
                    + "2 eg 2 ek 2 ew 9 f6 2 fa 2 fr 1 fu 5 g1 5 g8 2 gg 18 hp 9 hz c ic 2 ig 2 ij 5 ip 8 j4 5 jb 3 jf 7 "
                    + "jq 7 k0 f kg 5 kt 1 lc e lr 5 lx 1 m0 9 mb 8 mk 1 mm 5 ms 1 mv 7 n4 1 n6 4 nj 1 nr 2 nw 1 ny 2 o1 1 "
                    + "ok 2 oq 1 ou 1 p0 7 p8 1 pa k pv 1b r9 1 rb 1 rd 1 rf 1 rh 1 rl 1 s4 1 s7 2 sg 2o v6 2 vm 4 wg 4 wm "
                    + "6 ww 4 x6 2 xa 6 xi 2 xm 2 xs 5 xz 2 y7 3 yc 6 yq 2 yu 4 z2 2 z6 2 za 2 5r9 1 5rg 1 5ri 1 5rk 2 5rn "
                    + "8 5rw 1 5ry 6 5s7 5 5sd 1 5sf 4 5sm 3 5sr 1 5tb 2 5tl 1 5tn 1 5tr 1 5uk 1 5uo 1 5v0 1 5v2 1 5v4 1 "
                    + "5vf 1 5vj 1 5vx 1 5xe 2 5xi 2 5xm 8 5xy 2 5y6 e 5yq a 5z2 c 5zm 2 5zq e 606 2 60a 6 60i 2 60u 8 61a "
                    + "a 61q 2k 64g m 654 6 65c 12 66g 6 66o 8 66x 1 66z 1 671 1 673 v 680 1h 69i f 69y e 6ae 6 6al j 6b6 "
                    + "3 6ba 9 6br 1 6bt 3 6c0 f 6cg 4 6cm 1 6cv 5 6d1 1 6d5 2 6d8 4 6dg 1 6dj 4 6eo 2 6es r 6g1 1 6g3 2 "
                    + "6g6 2 6g9 1 6gb 2 6ge 1 6gh 2 6gk 2 6go 3 6gt 1 6it 1 6j7 1 6ja 2 6ji 1 6jk 1 6jm 1 6jq 1 6jy 1 6kw "
                    + "f 6mh 1 6mo a 6nc 1 6og 4 6p3 1 6ps 1 6pu 2 6py 1 6q7 1 6q9 2 6qd 1 6qh 2 6qm 2 6qx 1 6qz 1 6ra 2 "
                    + "6rs 1 6sg 2 6sk 2 6wy 2 6xc 1 6xk 1 6xo 6 6xx 2 6y3 1 7fk 2 7fu 3 7g2 9 7gc 9 7gm 1 7gp 4 7gv 1 7h4 "
                    + "2 7hi 1 7io 2 7it 1 7ju 3 7jz 4 7kw 1 7kz 1 7l1 2 7l6 2 7pv 2 7pz 2 7rm 1 7rv 6 7s4 1 7vq 4 8rk 3 "
                    + "8rp 2 8s1 1 8sd 1 93s 1 942 4 94q 2 95e 1 x0c 1 x0i 4 x1q 2 x22 2 x2c 2 x2x f x3d 1 x4d 2 x4j 1 x4l "
                    + "1 x6a 3 xub 1 xuu 2 1dkw 5 1edb 1 2q6l 3 2q7j 1 2q96 6 2qw9 1 2qz6 1 2rew 1 2rrq 1";

    private static final String REGULAR =
            "5k 81 bu dt dt mw gx 6x 8f 8f bm dt 6x 8n 6x 9q dt dt dt dt dt dt dt dt dt dt 6x 6x dt dt dt bt nj "
                    + "f3 gc fv h3 en dq h5 i4 7b db g3 di k7 hz ig fq ig ft eu ew hx eb lu e9 d8 ez 8f 9q 8f dt dw f2 e0 "
                    + "fd co ff ds 84 e0 f4 6u 6v dr 73 n1 f7 f2 ff ff 9n bn 9e f4 cz jz ce cz bt 8f 6p 8f dt 5k 81 dt dt "
                    + "dt dt 6p dt f2 ko 9l bx dt 8n br f2 97 dt a7 a7 f2 fm fk 6x f2 a7 a5 bx lp mg m4 bt f4 f4 f4 f4 f4 "
                    + "f4 mu fv en en en en 7b 7b 7b 7b hr hz ig ig ig ig ig dt ig hx hx hx hx d8 g7 g0 e0 e0 e0 e0 e0 e0 "
                    + "lm co ds ds ds ds 6u 6u 6u 6u f4 f7 f2 f2 f2 f2 f2 dt f2 f4 f4 f4 f4 cz ff cz f4 e0 f4 e0 f4 e0 fv "
                    + "co fv co fv co fv co h3 fx hn fm en ds en ds en ds en ds en ds h5 e0 h5 e0 h5 e0 h5 e0 i4 f4 j8 fh "
                    + "7b 6u 7b 6u 7b 6u 7b 6u 7b 6v em dp dc 6v g3 dr dr di 73 di 73 di 7d di a2 dw 8a hz f7 hz f7 hz f7 "
                    + "ld hn f7 ig f2 ig f2 ig f2 nj nb ft 9n ft 9n ft 9n eu bn eu bn eu bn eu bn ew 9e ew 9e ew 9e hx f4 "
                    + "hx f4 hx f4 hx f4 hx f4 hx f4 lu jy d8 cz d8 ez bt ez bt ez bt 7j fr ko fv ln et en i0 f3 84 h5 eb "
                    + "7b 8f 85 d0 f7 ig f2 ib f4 iu fa f2 6u cl ap 6w f4 e0 7b 6u ig f2 hx f4 hx f4 hx f4 hx f4 hx f4 ds "
                    + "mu lm ic g2 h5 e0 ig f2 fa bt 6v h5 e0 fq hz f7 f4 e0 mu lm ig f2 f4 e0 en ds 7b 6u ig f2 eu bn ew "
                    + "9e dt c1 i4 f4 i8 ig ew f4 e0 6v f3 fv co dz ew de bv gt j1 eb dv 86 e0 fk fn fd co cr ff ff ds ds "
                    + "ik c0 cc g2 f6 87 ff ff dt cz e7 f7 f4 f4 86 73 9h 9s 9b 73 ft n1 n1 n1 f7 f7 f3 f2 jg jl iw 9n 9n "
                    + "9n 9n 98 7f dr dt bn 6v 83 7u 9e 9e g7 f6 eq cz jy cz bj bt cr bt bl bl el e4 dt fm 9i dr bf bv bv "
                    + "nd nh or i2 fc kq a6 a6 4p 6o 6o dj 8v 6x 75 75 75 6q 6q 8l 8l f2 f2 57 7p 69 69 36 6x 6x 6q 6q a7 "
                    + "a7 a7 a7 f2 f2 f2 f2 f2 f2 4s 8u 4u 7v 8j 8e a7 0 0 0 0 0 0 0 0 0 0 0 0 0 0 0 0 0 0 0 0 0 0 0 0 0 0 "
                    + "0 0 0 0 0 0 0 0 0 0 0 0 0 0 0 0 0 0 0 0 0 0 0 0 0 0 0 0 0 0 0 0 0 0 0 0 0 6x 6x f2 6x f2 f2 fx 6x "
                    + "gz kg 9n kl gs kp 7a f4 gc du gc en ez i4 ig 7b g3 eb k7 hz et ig hx fq ey ew d8 jz e9 jf iu 7b d8 "
                    + "fk cg f1 7a e6 fk fp dg er cg bs f1 ei 7a dq dq fm d6 bz ev ga f9 c0 f6 cq e6 iw dd j5 jh 7a e6 ev "
                    + "e6 jh g9 fg ei iw ei ev cy bh du ig ff eo en en j3 du fv eu 7b 7b dc ox pt jc g3 i8 ea hx f4 g4 gc "
                    + "du hq en n2 fa ia i8 g3 hi k7 i4 ig hx fq fv ew ea kc e9 hu gm od og k0 m6 g4 fv p8 g6 e0 f4 e4 bf "
                    + "et ds j4 co fp fp dr er hl fm f2 fd ff co cs cz ke ce fi e8 kt l5 gk iq dn co ki eb ds ds fk bf co "
                    + "bn 6u 6u 6v kf l2 f4 dr fp cz fi h2 g0 ig f2 ep d9 du bk eh bz oa k7 fe co hg ew jv gy id fy fv co "
                    + "d8 cz d8 cz fb de gv eg gm f4 7b n2 j4 ge e1 i4 fm 73 f4 e0 mu lm en ds i4 ds i8 fp ig f2 ig f2 ea "
                    + "cz ea cz du bf e7 a3 aw bf 9r bf c2 4w 8x ar 91 di by cb ap at 9w bz em 9l ae ae 9c 9c 8s 9j 9d fj "
                    + "a9 a5 ae 6g aa 8x q5 ib dg 9i f6 8i 5l fj ab a8 82 a5 0 gc fd gc fd h3 ff h3 ff h3 ff h3 ff en ds "
                    + "dq 84 h5 e0 i4 f4 i4 f4 i4 f4 i4 f4 i4 f4 g3 dr g3 dr di 73 di 73 di 73 k7 n1 k7 n1 k7 n1 hz f7 hz "
                    + "f7 hz f7 ig f2 fq ff ft 9n ft 9n ft 9n ft 9n eu bn eu bn eu bn ew 9e ew 9e ew 9e hx f4 eb cz lu jy "
                    + "lu jy lu jy d8 cz ez bt ez bt ez bt f4 9e ij et f4 e0 f4 e0 f4 e0 f4 e0 f4 e0 f4 e0 f4 e0 f4 e0 f4 "
                    + "e0 f4 e0 f4 e0 f4 e0 en ds en ds en ds en ds en ds en ds en ds en ds 7b 6u 7b 6u ig f2 ig f2 ig f2 "
                    + "ig f2 ig f2 ig f2 ig f2 ig f2 ig f2 ig f2 ig f2 ig f2 hx f4 hx f4 ib f4 ib f4 ib f4 ib f4 ib f4 d8 "
                    + "cz d8 cz d8 cz d8 cz fk fk fk fk fk fk fk fk gc fx kg ka k0 jq hl hl cg cg cg cg cg cg ih ih lr lr "
                    + "lr lh f1 f1 f1 f1 f1 f1 f1 f1 ly ly p8 p8 p8 oy nd nd 7a 7a 7a 7a 7a 7a 7a 7a b5 b5 ef ef el e5 ck "
                    + "ck ev ev ev ev ev ev m3 m3 pr pr pd p3 e6 e6 e6 e6 e6 e6 e6 e6 ic lm la k5 jh jh jh jh jh jh jh jh "
                    + "mh mh q5 q5 pr pe nd nd fk fk cg cg f1 f1 7a 7a ev ev e6 e6 jh jh fk fk fk fk fk fk fk fk nl n7 rq "
                    + "rj r9 qz ov ov f1 f1 f1 f1 f1 f1 f1 f1 t7 t7 wi wi wi w8 un un jh jh jh jh jh jh jh jh tr tr xf xf "
                    + "x1 wn um um fk fk fk fk fk fk fk f4 f4 g4 fx md f2 7a f2 f2 f2 f1 f1 f1 f1 f1 gz gz kg kg pd f2 f2 "
                    + "f2 7a 7a 7a 7a 7a 7a 7b 7b 9n 9a f2 f2 f2 e6 e6 e6 e6 f9 f9 e6 e6 d8 d8 gs gs jk f2 f2 f2 jh jh jh "
                    + "jh jh ks k8 l3 kp q3 f2 f2 dt 2s k 0 8n 8n dt dc m8 m8 av dw 6x 6x 6x 6x bu bu bu cm cm 8g 8g qc 3c "
                    + "x6 17g 6x bu 6x 7j 7j f9 c0 dw fn 2e mn iv iv cc a7 4m a7 a7 a7 a7 a7 a7 a7 a7 a7 6l 6l a9 a7 a7 a7 "
                    + "a7 a7 a7 a7 a7 a7 a7 a7 a7 a7 6l 6l dt dt dt dt dt dt dt dt dt dt dt dt dt dt dt dt dt mg bd ot kn "
                    + "jc hp hp iu m8 mc mc uc mc mt mc mt mt ni mc mt mc mt mt m9 mt h7 h7 h7 h7 h7 h7 h7 h7 h7 h7 h7 h7 "
                    + "h7 h7 h7 m8 f4 eo en gc ip e0 dt 2e dt fh lq dt dt 9v 6x f0 dt dt dt dt dt go m8 dt rs 8f 8f 8f 8f "
                    + "9v 9v rs rs rs go go 8g 8g 8g go go 8g 8g go go 8g 8g go go go 8g 8g go go 8g 8g go go go ed go g9 "
                    + "go 8g go 8g m7 m7 go go go go go go go go go go go go dz go h0 i8 em fu go a0 a0 k0 ji a0 k0 go ai "
                    + "ai 8f 8f dz 85 fg e0 9e d9 9m c0 8f 8f 8f 8f 15o 1p4 da 6x 81 7u 81 7u tf oc d4 am gw fq ig et fq "
                    + "a7 gr gr dg di 73 ft e3 fq a7 ew bz 6x ev 9j e2 fp aj 96 cb cy nn i2 g1 ey f7 mv n4 0 ko ko kk ko "
                    + "hp i5 i5 ko ko kk go go hp go";

    private static final String SEMIBOLD =
            "5k 8r de e9 e9 nd hr 7n 90 90 c6 e9 7n 8y 7n 9k e9 e9 e9 e9 e9 e9 e9 e9 e9 e9 7n 7n e9 e9 e9 cc ob "
                    + "fi gl g0 hd ey e6 hg if 7u dq gl dy kp i9 iq g6 iq gg f5 f6 i7 ew m8 f1 dx f0 90 9k 90 e9 dw f9 ec "
                    + "fn cu fo e3 8t eg fi 7a 7b ei 7j nf fk f9 fo fo ad bz a1 fg dr ks dd dr cb 90 73 90 e9 5k 8r e9 e9 "
                    + "e9 e9 73 e9 f9 kr 9s cn e9 8y cb f9 9o e9 ac ac f9 g2 gn 7n f9 ac a9 cn m3 mz mf cc fi fi fi fi fi "
                    + "fi n6 g0 ey ey ey ey 7u 7u 7u 7u i3 i8 iq iq iq iq iq e9 iq i7 i7 i7 i7 dx go gs ec ec ec ec ec ec "
                    + "lo cu e3 e3 e3 e3 7a 7a 7a 7a fc fk f9 f9 f9 f9 f9 e9 f9 fg fg fg fg dr fo dr fi ec fi ec fi ec g0 "
                    + "cu g0 cu g0 cu g0 cu hd gi hx fo ey e3 ey e3 ey e3 ey e3 ey e3 hg eg hg eg hg eg hg eg if fi jj fq "
                    + "7u 7a 7u 7a 7u 7a 7u 7a 7u 7a fp ek dq 7b gl ei ei dy 7j dy 7j dy 84 dy bc ei 95 i8 fk i8 fk i8 fk "
                    + "mi i3 fk iq f9 iq f9 iq f9 nv n2 gg ad gg ad gg ad f5 bz f5 bz f5 bz f5 bz f6 a1 f6 a1 f6 a1 i7 fg "
                    + "i7 fg i7 fg i7 fg i7 fg i7 fg m8 ks dx dr dx f0 cb f0 cb f0 cb 84 fw ld g0 mc f3 ey i9 f1 8t hg ew "
                    + "7u 8y 8p dr fk iq f9 in fg jb fd fg 7a df bs 6w fi ec 7u 7a iq f9 i7 fg i7 fg i7 fg i7 fg i7 fg e3 "
                    + "n6 lo il ge hg eg iq f9 fd cb 7b hg eg g6 i8 fk fi ec n6 lo iq f9 fi ec ey e3 7u 7a iq f9 f5 bz f6 "
                    + "a1 e2 cd if fi io iq f5 fi ec 7b fi g0 cu eg f6 e3 ci h3 jb ew ea 8r ec fr fx fn cu d0 fo fo e4 e4 "
                    + "je c7 ce gp fg 8r fo fo e3 dr f1 fk fi fi 8q 7j a9 au as 7j gl nf nf nf fk fk fc f9 ju k6 jq ad ad "
                    + "ad ad 9v 80 ea ec bz 7b 8r 8f a1 a1 gr fh f1 dr ks dr c9 cb do cb c1 c1 f1 ee e3 fw a7 ej bq cb cb "
                    + "ny o7 q2 j3 fv lg af af 50 74 74 e1 9c 7n 7s 7s 7s 74 74 94 94 f9 f9 5j 85 6e 6e 3n 7n 7n 74 74 ac "
                    + "ac ac ac f9 f9 f9 f9 f9 f9 5c 9c 54 82 94 8z ac 0 0 0 0 0 0 0 0 0 0 0 0 0 0 0 0 0 0 0 0 0 0 0 0 0 0 "
                    + "0 0 0 0 0 0 0 0 0 0 0 0 0 0 0 0 0 0 0 0 0 0 0 0 0 0 0 0 0 0 0 0 0 0 0 0 0 7n 7n f9 7n f9 f9 gu 7n "
                    + "i2 lj ay li ib lt 7u fi gl e6 h2 ey f0 if iq 7u gl ew kp i8 fc iq i6 g6 f4 f6 dx kk f1 k6 jb 7u dx "
                    + "g2 cs fc 7u eh g2 g7 e5 f0 cs cd fc ew 7u eg ek g2 dv ci f4 gz fj c7 fk d6 eh jq e0 k1 k4 7u eh f4 "
                    + "eh k4 gp fy ew jq f1 f4 da br ed iq g2 f7 ey ey ja e6 g0 f5 7u 7u dq p2 pv jn gl ii ev i6 fi ge gl "
                    + "e6 i6 ey np fd im ii gl hw kp if iq i6 g6 g0 f6 ev ks f1 i8 h2 ow p4 k5 my ge g0 pt go ec fd ee bq "
                    + "fj e3 k6 cy fy fy ei fc hz fw f9 fo fo cu d8 dr l1 dd g1 er ll m4 gy jn e0 cu l1 eq e3 e3 fs bq cu "
                    + "bz 7a 7a 7b l2 li fi ei fy dr fs h7 gc iq f9 fc e1 e6 bt eu cj ou lb fj cy i0 fm k9 hm ir gg g0 cu "
                    + "dx dr dx dr g3 ec he f8 h2 fi 7u np k6 gx es if fw 7j fi ec n6 lo ey e3 if e3 ii fy iq f9 iq f9 ev "
                    + "dr ev dr e6 bq f1 af b3 bn a0 bp cb 5a 99 b5 9d dw c6 ck b1 b6 a6 c8 ey 9s ak ak 9h 9h 8x 9s 9u fs "
                    + "ag a9 ak 6u ah 9e r6 ja dw a9 fh 8m 61 fs ai ae 8d a9 0 gl fn gl fn hd fo hd fo hd fo hd fo ey e3 "
                    + "e6 8t hg eg if fi if fi if fi if fi if fi gl ei gl ei dy 7j dy 7j dy 7j kp nf kp nf kp nf i8 fk i8 "
                    + "fk i8 fk iq f9 g6 fo gg ad gg ad gg ad gg ad f5 bz f5 bz f5 bz f6 a1 f6 a1 f6 a1 i7 fg ew dr m8 ks "
                    + "m8 ks m8 ks dx dr f0 cb f0 cb f0 cb fi a1 j2 f3 fi ec fi ec fi ec fi ec fi ec fi ec fi ec fi ec fi "
                    + "ec fi ec fi ec fi ec ey e3 ey e3 ey e3 ey e3 ey e3 ey e3 ey e3 ey e3 7u 7a 7u 7a iq f9 iq f9 iq f9 "
                    + "iq f9 iq f9 iq f9 iq f9 iq f9 iq f9 iq f9 iq f9 iq f9 i7 fg i7 fg in fg in fg in fg in fg in fg dx "
                    + "dr dx dr dx dr dx dr g2 g2 g2 g2 g2 g2 g2 g2 hi gu ly lu lk la ii ii cs cs cs cs cs cs je je n8 n8 "
                    + "n8 my fc fc fc fc fc fc fc fc mw mw qp qp qp qf o7 o7 7u 7u 7u 7u 7u 7u 7u 7u cb cb g4 g4 g8 fu dm "
                    + "dm f4 f4 f4 f4 f4 f4 mv mv r4 r4 qo qe eh eh eh eh eh eh eh eh jt nf n7 ld k4 k4 k4 k4 k4 k4 k4 k4 "
                    + "ng ng rp rp r9 qt o7 o7 g2 g2 cs cs fc fc 7u 7u f4 f4 eh eh k4 k4 g2 g2 g2 g2 g2 g2 g2 g2 pc oo ts "
                    + "to te t4 qc qc fc fc fc fc fc fc fc fc up up yi yi yi y8 w0 w0 k4 k4 k4 k4 k4 k4 k4 k4 va va zj zj "
                    + "z3 yn w1 w1 g2 g2 g2 g2 g2 g2 g2 fi fi h6 gu nc f9 7u f9 f9 f9 fc fc fc fc fc i2 i2 lj lj q8 f9 f9 "
                    + "f9 7u 7u 7u 7u 7u 7u 7u 7u ay aq f9 f9 f9 eh eh eh eh fj fj eh eh dx dx ib ib km f9 f9 f9 k4 k4 k4 "
                    + "k4 k4 lu la m9 lt r4 f9 f9 e9 2s k 0 8y 8y e9 dc m8 m8 br dw 7n 7n 7n 7n de de de de de 91 91 qs 3c "
                    + "xy 18j 7n de 7n 7u 7u g6 co dw fz 2j nh jw jw d6 ac 4x ac ac ac ac ac ac ac ac ac 71 71 ag ac ac ac "
                    + "ac ac ac ac ac ac ac ac ac ac 71 71 e9 e9 e9 e9 e9 e9 e9 e9 e9 e9 e9 e9 e9 e9 e9 e9 e9 mz c8 pv kq "
                    + "jz ic ic jb m8 mt mt v8 mt n7 mt n7 n7 o5 mt n7 mt n7 n7 mn n7 h6 h6 h6 h6 h6 h6 h6 h6 h6 h6 h6 h6 "
                    + "h6 h6 h6 m8 fi fd ey h2 j8 eg e9 2j e9 fx m6 e9 e9 ag 7n fx e9 e9 e9 e9 e9 go m8 e9 rs 90 90 90 90 "
                    + "ag ag rs rs rs go go 91 91 91 go go 91 91 go go 91 91 go go go 91 91 go go 91 91 go go go et go g5 "
                    + "go 91 go 91 mb mb go go go go go go go go go go go go ek go hi io f6 gc go a0 a0 k0 jp a0 k0 go bc "
                    + "bc 90 90 eg 8p fw ec a1 e1 a2 co 90 90 90 90 15o 1p4 dl 7n 8r 8f 8r 8f t8 nr df b9 hg fv iq f3 g6 "
                    + "ax h0 h0 dw dy 7j gg ev g6 ax f6 ca 7n fu aa ep g7 ap 9i ck dc o8 j3 h6 g2 gc of oo 0 kr kr kk kr "
                    + "ic j2 j2 kr kr kk go go i3 go";

    private static final String BOLD =
            "5k 9g ex eo eo nt ij 8c 9k 9k cp eo 8c 98 8c 9f eo eo eo eo eo eo eo eo eo eo 8c 8c eo eo eo cv p2 "
                    + "fx gt g6 hn f8 ek hq iq 8d e5 h2 ee l6 ih j0 gk j0 h1 fg fg ih fg ml fr el f1 9k 9f 9k eo dw ff en "
                    + "fx d0 fx ee 9h eu fv 7o 7q f8 7y nt fw ff fx fx b2 cb an fs ej lk ea eh cs 9k 7g 9k eo 5k 9g eo eo "
                    + "eo eo 7g eo ff ku 9z dc eo 98 cu ff a5 eo ag ag ff gi ho 8c ff ag ad dc mh ni mq cv fx fx fx fx fx "
                    + "fx nh g6 f8 f8 f8 f8 8d 8d 8d 8d i9 ih j0 j0 j0 j0 j0 eo j0 ih ih ih ih el h5 hk en en en en en en "
                    + "lp cz ee ee ee ee 7o 7o 7o 7o fi fw ff ff ff ff ff eo ff fs fs fs fs eh fx eh fx en fx en fx en g6 "
                    + "cz g6 cz g6 cz g6 cz hn h2 i7 fx f8 ee f8 ee f8 ee f8 ee f8 ee hq eu hq eu hq eu hq eu iq fv ju fz "
                    + "8d 7o 8d 7o 8d 7o 8d 7o 8d 7p gq fe e5 7q h2 f8 f8 ee 7y ee 7y ee 8u ee cl f3 9z ih fw ih fw ih fw "
                    + "nm ii fw j0 ff j0 ff j0 ff o7 mu h1 b2 h1 b2 h1 b2 fg cb fg cb fg cb fg cb fg an fg an fg an ih fs "
                    + "ih fs ih fs ih fs ih fs ih fs ml lk el eh el f1 cs f1 cs f1 cs 8p g0 m1 g6 mz fd f8 ih ez 9h hq fg "
                    + "8c 9h 99 eh fw j0 ff iz fs jr fg ft 7o e9 ct 6w fx en 8d 7o j0 ff ih fs ih fs ih fs ih fs ih fs ee "
                    + "nh lp it gp hq eu j0 ff fg cs 7q hq eu gk ih fw fx en nh lp j0 ff fx en f8 ee 8d 7o j0 ff fg cb fg "
                    + "an ea cp iq fv j2 j0 fd fx en 7q fx g6 d0 ex fg er d3 hf jl fg ep 9b en fy g7 fx cz d8 fx fx ee ee "
                    + "k7 cd cg hc fq 9b fx fx ed ej ft fw fv fv 99 7y az bv c3 7y hb nt nt nt fw fw fl ff k6 kr ki b2 b2 "
                    + "b2 b2 ah 8k es et cb 7q 95 8z an an hb fs fc ej lk eh cy cs eh cs cg cg fg eo ed g6 av f9 c0 cq cq "
                    + "oj ow r7 k3 ge m5 ao ao 5a 7k 7k ej 9t 8c 8e 8e 8e 7h 7h 9m 9m ff ff 5v 8k 6k 6k 43 8c 8c 7h 7h ag "
                    + "ag ag ag ff ff ff ff ff ff 5v 9t 5e 89 9o 9j ag 0 0 0 0 0 0 0 0 0 0 0 0 0 0 0 0 0 0 0 0 0 0 0 0 0 0 "
                    + "0 0 0 0 0 0 0 0 0 0 0 0 0 0 0 0 0 0 0 0 0 0 0 0 0 0 0 0 0 0 0 0 0 0 0 0 0 8c 8c ff 8c ff ff hr 8c "
                    + "j3 mk c8 mf js mw 8d fx gt eh hs f8 f1 iq j0 8d h2 fg l6 ih fv j0 if gk f9 fg el l4 fr kw jr 8d el "
                    + "gj d3 fm 8d es gj go et f8 d3 cy fm f9 8d f6 fc gi ej d1 fd hn ft ce fx dk es ki em kw kq 8d es fd "
                    + "es kq h4 gf f9 ki fk fd dm c1 ew j0 gn fq f8 f8 jh eh g6 fg 8d 8d e5 p6 px jy h2 is ff if fx go gt "
                    + "eh im f8 ob fg iu is h2 i9 l6 iq j0 if gk g6 fg ff l8 fr il hi pe ps ka np go g6 qe h5 en fl eo c0 "
                    + "g8 ee l7 d8 g7 g7 f8 fx ic g6 ff fy fx cz do eh ln ea gk fa mb n2 hb kj ec d0 lk f5 ee ee g0 c0 d0 "
                    + "cb 7o 7o 7q lo lw fv f8 g7 eh g2 hc go j0 ff fy et eh c1 f6 d3 pd me fo d8 ij gc km ia j5 gx g6 cz "
                    + "el ei el ei gt f8 hx fz hi fv 8d ob l7 hg fi iq g6 7y fx en nh lp f8 ee iq ee is g7 j0 ff j0 ff ff "
                    + "eh ff eh eh c0 ft ar bb bv a9 bz ck 5n 9k bi 9p ea ce ct bc bk ag cg f9 9z ap ap 9m 9m 92 a1 ab g1 "
                    + "ao ad ap 77 an 9v s5 k8 ea az fs 8p 6g g1 aq ak 8o ad 0 gt fx gt fx hn fx hn fx hn fx hn fx f8 ee "
                    + "ek 9h hq eu iq fv iq fv iq fv iq fv iq fv h2 f8 h2 f8 ee 7y ee 7y ee 7y l6 nt l6 nt l6 nt ih fw ih "
                    + "fw ih fw j0 ff gk fx h1 b2 h1 b2 h1 b2 h1 b2 fg cb fg cb fg cb fg an fg an fg an ih fs fg ej ml lk "
                    + "ml lk ml lk el eh f1 cs f1 cs f1 cs fv an jl fd fx en fx en fx en fx en fx en fx en fx en fx en fx "
                    + "en fx en fx en fx en f8 ee f8 ee f8 ee f8 ee f8 ee f8 ee f8 ee f8 ee 8d 7o 8d 7o j0 ff j0 ff j0 ff "
                    + "j0 ff j0 ff j0 ff j0 ff j0 ff j0 ff j0 ff j0 ff j0 ff ih fs ih fs iz fs iz fs iz fs iz fs iz fs el "
                    + "eh el eh el eh el eh gj gj gj gj gj gj gj gj io hr nf nd n3 mt jf jf d3 d3 d3 d3 d3 d3 kb kb om om "
                    + "om oc fm fm fm fm fm fm fm fm ns ns s4 s4 s4 ru oz oz 8d 8d 8d 8d 8d 8d 8d 8d dg dg hs hs ht hi en "
                    + "en fd fd fd fd fd fd nn nn sg sg ry ro es es es es es es es es l8 p5 p2 mj kq kq kq kq kq kq kq kq "
                    + "oe oe t7 t7 sp s7 p1 p1 gj gj d3 d3 fm fm 8d 8d fd fd es es kq kq gj gj gj gj gj gj gj gj r0 q4 vs "
                    + "vq vg v6 rs rs fm fm fm fm fm fm fm fm w5 w5 10h 10h 10h 107 xc xc kq kq kq kq kq kq kq kq wq wq "
                    + "11k 11k 112 10k xe xe gj gj gj gj gj gj gj fx fx i7 hr oa ff 8d ff ff ff fm fm fm fm fm j3 j3 mk mk "
                    + "r2 ff ff ff 8d 8d 8d 8d 8d 8d 8d 8d c8 c5 ff ff ff es es es es ft ft es es el el js js ln ff ff ff "
                    + "kq kq kq kq kq mv mb ne mw s4 ff ff eo 2s k 0 98 98 eo dc m8 m8 cm dw 8c 8c 8c 8c ex ex ex e6 e6 9l "
                    + "9l r6 3c yp 19k 8c ex 8c 84 84 h3 dc dw gb 2o o9 kv kv dz ag 58 ag ag ag ag ag ag ag ag ag 7g 7g ao "
                    + "ag ag ag ag ag ag ag ag ag ag ag ag ag 7g 7g eo eo eo eo eo eo eo eo eo eo eo eo eo eo eo eo eo ni "
                    + "d2 qv ku km iy iy jr m8 n9 n9 w3 n9 nl n9 nl nl os n9 nl n9 nl nl n1 nl h5 h5 h5 h5 h5 h5 h5 h5 h5 "
                    + "h5 h5 h5 h5 h5 h5 m8 fx g1 f8 hs jq eu eo 2o eo gc mm eo eo b0 8c gt eo eo eo eo eo go m8 eo rs 9k "
                    + "9k 9k 9k b0 b0 rs rs rs go go 9l 9l 9l go go 9l 9l go go 9l 9l go go go 9l 9l go go 9l 9l go go go "
                    + "f8 go g1 go 9l go 9l mf mf go go go go go go go go go go go go f4 go hz j2 fp gu go a0 a0 k0 jv a0 "
                    + "k0 go c5 c5 9k 9k ex 99 gc en an et ai dc 9k 9k 9k 9k 15o 1p4 dw 8c 9g 90 9g 90 t1 n7 dq bw hz g0 "
                    + "j0 fd gk bm h9 h9 ea ee 7y h1 fl gk bm fg ck 8c gs b0 fb go au 9u ct dp ot k3 i9 h5 hf px q7 0 ku "
                    + "ku kk ku iy jz jz ku ku kk go go ig go";

    private static final Map<Weight, Map<Integer, Integer>> ALL =
            Map.of(Weight.REGULAR, table(REGULAR), Weight.SEMIBOLD, table(SEMIBOLD), Weight.BOLD, table(BOLD));

    private LetterWidths() {}

    /** The width of a letter in thousandths of the em; −1 where the typeface lacks it. */
    static int of(int letter, Weight weight) {
        return ALL.getOrDefault(weight, Map.of()).getOrDefault(letter, -1);
    }

    private static Map<Integer, Integer> table(String widths) {
        String[] runs = RUNS.split(" ", -1);
        String[] wide = widths.split(" ", -1);
        Map<Integer, Integer> table = new HashMap<>();
        int place = 0;
        for (int run = 0; run < runs.length; run += 2) {
            int first = Integer.parseInt(runs[run], 36);
            for (int i = Integer.parseInt(runs[run + 1], 36); i > 0; i--) {
                table.put(first++, Integer.parseInt(wide[place++], 36));
            }
        }
        return table;
    }
}

'use strict';
const by = (id) => document.getElementById(id);
const decoded = (text) => Uint8Array.from(atob(text.trim()), (letter) => letter.charCodeAt(0));
const guideline = new TextDecoder().decode(decoded(by('guideline').textContent));
// The planner's bytes: five signs for four bytes; a last group that is not full has one sign more than bytes.
function unpacked(text) {
  const signs = text.trim();
  const bytes = new Uint8Array(Math.floor(signs.length / 5) * 4 + Math.max(0, signs.length % 5 - 1));
  const number = (code) => code - 40 - (code > 60) - (code > 92);
  for (let at = 0, to = 0; at < signs.length; at += 5) {
    let group = 0;
    for (let i = 0; i < 5; i++) group = group * 85 + (at + i < signs.length ? number(signs.charCodeAt(at + i)) : 84);
    for (let shift = 24; shift >= 0 && to < bytes.length; shift -= 8) bytes[to++] = Math.floor(group / 2 ** shift) % 256;
  }
  return bytes;
}
let worker, began, tongue;
const words = JSON.parse(by('words').textContent);
const w = (key, more = {}) => words[tongue][key].replace(/\{(\w+)\}/g, (all, name) => more[name] ?? all);
// cloths of few pieces, planned unseen while she types, the quickest first
const SMALL = '6 x 9 in, a linen\n4 x 20 in, 4 of them, b linen';
const LESS_SMALL = SMALL + '\n4 x 22 in, 4 of them, c linen';

/** The page in a language: what is marked, and what was written in all of them. */
function speak(tag) {
  tongue = tag;
  document.documentElement.lang = tag;
  document.querySelectorAll('[data-w]').forEach((each) => { each.textContent = w(each.dataset.w, each.dataset); });
  document.querySelectorAll('[data-label]').forEach((each) => { each.setAttribute('aria-label', w(each.dataset.label)); });
  document.querySelectorAll('[data-in]').forEach((each) => { each.hidden = each.dataset.in !== tag; });
  const said = document.querySelector('.by');
  said.hidden = !said.dataset.name;
  by('favourite').placeholder = w('ideaSuchAs', {fabric: by('favourite').dataset.fabric});
}
const waiting = new Map();

function start() {
  worker = new Worker(URL.createObjectURL(new Blob([by('worker').textContent], {type: 'text/javascript'})));
  worker.onmessage = (event) => heard(event.data);
  worker.onerror = () => say(w('ideaOld'));
  worker.postMessage({packed: new Blob([unpacked(by('planner').textContent)])});
}

function say(words) { by('said').textContent = words; }

function heard(said) {
  if (said.ready) {
    by('go').disabled = false;
    document.body.dataset.ready = 'yes';
    worker.postMessage({warm: true, guideline, heaps: [SMALL, LESS_SMALL, LESS_SMALL]});
  } else if (said.svg) {
    if (!document.body.dataset.first) document.body.dataset.first = Math.round(performance.now() - began);
    by('first').innerHTML = said.svg;
    say(w('ideaFirst'));
  } else if (said.answer !== undefined) {
    shown(JSON.parse(said.answer));
    document.body.dataset.done = Math.round(performance.now() - began);
  } else if (said.pictures !== undefined) {
    waiting.get(said.kind + said.number)(JSON.parse(said.pictures));
  } else if (said.plan !== undefined) {
    saved(said.plan, 'plan.json');
  } else if (said.trouble) {
    ended();
    say(w('ideaTrouble'));
  }
}

function ended() {
  by('go').disabled = false;
  by('stop').hidden = true;
  by('first').replaceChildren();
}

by('form').addEventListener('submit', (event) => {
  event.preventDefault();
  delete document.body.dataset.first;
  delete document.body.dataset.done;
  by('cloths').replaceChildren();
  by('go').disabled = true;
  by('stop').hidden = false;
  say(w('mineLooking'));
  began = performance.now();
  worker.postMessage({guideline, heap: by('heap').value, favourite: by('favourite').value.trim(), unit: by('unit').value, language: tongue});
});
by('stop').addEventListener('click', () => {
  worker.terminate();
  ended();
  by('go').disabled = true;
  say(w('ideaStopped'));
  start();
});
by('keep-idea').addEventListener('click', () => saved(guideline, 'idea.json'));

function saved(text, name) {
  const link = document.createElement('a');
  link.href = URL.createObjectURL(new Blob([text], {type: 'application/json'}));
  link.download = name;
  link.click();
}

function add(parent, name, text, kind) {
  const element = document.createElement(name);
  if (text) element.textContent = text;
  if (kind) element.className = kind;
  parent.append(element);
  return element;
}

function picture(parent, svg, caption) {
  const figure = add(parent, 'figure');
  figure.insertAdjacentHTML('beforeend', svg);
  if (caption) add(figure, 'figcaption', caption);
}

/** A fold whose pictures are drawn when it is opened, and before printing. */
function fold(parent, title, number, kind) {
  const details = add(parent, 'details', '', kind);
  add(details, 'summary', title);
  let asked;
  details.draw = () => {
    asked ??= new Promise((done) => {
      waiting.set(kind + number, (pictures) => {
        pictures.forEach((svg) => picture(details, svg));
        if (!pictures.length) add(details, 'p', w('ideaEmpty'));
        done();
      });
      worker.postMessage({number, kind});
    });
    return asked;
  };
  details.addEventListener('toggle', () => details.open && details.draw());
  return details;
}

function shown(answer) {
  ended();
  if (answer.faults) {
    by('said').className = 'faults';
    say(answer.faults.join('\n'));
    return;
  }
  by('said').className = '';
  say(answer.cloths.length ? w(answer.cloths.length > 1 ? 'ideaTwo' : 'ideaOne')
    : w('mineNone') + ' ' + answer.why.join(' '));
  answer.cloths.forEach((cloth, number) => by('cloths').append(told(cloth, number, answer.why)));
}

function told(cloth, number, why) {
  const section = document.createElement('section');
  section.className = 'cloth';
  add(section, 'h3', cloth.title + ', ' + cloth.size);
  if (cloth.good) add(section, 'p', cloth.good);
  if (cloth.bends.length || cloth.scraps) {
    const bends = add(section, 'div', '', 'bends');
    add(bends, 'p', w('mineNearest') + (cloth.scraps ? ' ' + w('mineScrapsOnly') : ''));
    if (cloth.bends.length) add(bends, 'p', cloth.bends.join(' ')).lang = 'en';
    if (why.length) {
      add(bends, 'p', w('mineWhy')).className = 'help';
      add(bends, 'p', why.join(' '));
    }
  }
  const pictures = add(section, 'div', '', 'pictures');
  picture(pictures, cloth.front, w('ideaFront'));
  picture(pictures, cloth.back, w('ideaBack'));
  cloth.cautions.forEach((caution) => add(section, 'p', w('ideaCare', {words: caution})));
  const list = add(section, 'details');
  add(list, 'summary', w('cutList'));
  rows(list, cloth.patches);
  fold(section, w('ideaPieces'), number, 'cut');
  const guide = fold(section, w('ideaGuide'), number, 'guide');
  const buttons = add(section, 'p', '', 'buttons');
  const print = add(buttons, 'button', w('ideaPrint'));
  print.type = 'button';
  print.addEventListener('click', async () => { await ready(section, [list, guide]); window.print(); });
  const keep = add(buttons, 'button', w('ideaKeep'), 'quiet');
  keep.type = 'button';
  keep.addEventListener('click', () => worker.postMessage({number, file: true}));
  return section;
}

async function ready(section, folds) {
  document.querySelectorAll('.cloth').forEach((each) => each.classList.toggle('printed', each === section));
  document.body.classList.add('one');
  for (const details of folds) {
    if (details.draw) await details.draw();
    details.open = true;
  }
  // what was opened is laid out first
  await new Promise((done) => requestAnimationFrame(() => requestAnimationFrame(done)));
}

function rows(parent, patches) {
  const table = add(parent, 'table');
  const head = add(add(table, 'thead'), 'tr');
  ['cutPatch', 'cutCut', 'cutFabric', 'cutPiece'].forEach((word) => { add(head, 'th', w(word)).scope = 'col'; });
  const body = add(table, 'tbody');
  patches.forEach((patch) => {
    const row = add(body, 'tr');
    [patch.patch, patch.cut, patch.fabric, patch.from].forEach((word) => add(row, 'td', word));
  });
}

by('unit').value = by('unit').dataset.unit;
const known = [...by('language').options].map((each) => each.value);
speak((navigator.languages || []).map((each) => each.slice(0, 2)).find((each) => known.includes(each)) || 'en');
by('language').value = tongue;
by('language').addEventListener('change', () => speak(by('language').value));
start();

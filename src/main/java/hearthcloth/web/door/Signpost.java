package hearthcloth.web.door;

import io.nayuki.qrcodegen.QrCode;
import java.net.Inet4Address;
import java.net.InetAddress;
import java.net.NetworkInterface;
import java.net.SocketException;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;

/** Where another device finds this machine, and the address as a picture to point a camera at. */
public final class Signpost {

    private Signpost() {}

    /** Addresses of this machine on networks round it; those at home first. */
    public static List<String> hosts() {
        List<String> found = new ArrayList<>();
        try {
            for (NetworkInterface network : Collections.list(NetworkInterface.getNetworkInterfaces())) {
                if (network.isUp() && !network.isLoopback()) {
                    for (InetAddress address : Collections.list(network.getInetAddresses())) {
                        if (address instanceof Inet4Address && !address.isLinkLocalAddress()) {
                            found.add(address.isSiteLocalAddress() ? 0 : found.size(), address.getHostAddress());
                        }
                    }
                }
            }
        } catch (SocketException e) {
            return List.of();
        }
        return found;
    }

    /**
     * A QR code as SVG, with four modules of quiet zone round it (docs/sources.md#qr-quiet).
     *
     * @param words what it is, for who hears the page; plain letters
     */
    public static String picture(String address, String words) {
        QrCode code = QrCode.encodeText(address, QrCode.Ecc.MEDIUM);
        int quiet = 4;
        StringBuilder path = new StringBuilder();
        for (int y = 0; y < code.size; y++) {
            for (int x = 0; x < code.size; x++) {
                if (code.getModule(x, y)) {
                    path.append("M")
                            .append(x + quiet)
                            .append(' ')
                            .append(y + quiet)
                            .append("h1v1h-1z");
                }
            }
        }
        int side = code.size + 2 * quiet;
        return "<svg class=\"qr\" viewBox=\"0 0 " + side + " " + side + "\" role=\"img\" aria-label=\"" + words
                + "\"><rect width=\"" + side + "\" height=\"" + side + "\" fill=\"#fff\"/><path fill=\"#000\" d=\""
                + path + "\"/></svg>";
    }
}

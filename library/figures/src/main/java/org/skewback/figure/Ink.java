package org.skewback.figure;

/**
 * The house's colours. Text and line colours have a contrast of at least 4.5 to 1 on white, but
 * {@link #GREEN}, which is for lines only.
 */
enum Ink {
    BLACK(0x1a1a1a),
    GREY(0x5f6468),
    BLUE(0x00527f),
    RUST(0xa33b00),
    GREEN(0x009e73),
    HATCH(0x9aa0a5),
    GRID(0xdfe2e5),
    LIGHT(0xeef1f3),
    STEEL(0xd9e3ea),
    WHITE(0xffffff);

    private final int rgb;

    Ink(int rgb) {
        this.rgb = rgb;
    }

    int rgb() {
        return rgb;
    }

    String hex() {
        return String.format("#%06x", rgb);
    }

    static Ink nearest(int rgb) {
        for (Ink ink : values()) {
            if (ink.rgb == (rgb & 0xffffff)) {
                return ink;
            }
        }
        throw new IllegalArgumentException(
                String.format("colour #%06x is not one of the house's", rgb & 0xffffff));
    }
}

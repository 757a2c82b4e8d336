package org.skewback.arch;

import java.util.ArrayList;
import java.util.List;

/**
 * A section of a chord of the left rib, where a member starts.
 *
 * @param member the member
 * @param position distance of its start from the left springing, m
 */
record ChordSection(String member, double position) {

    /** Sections chord by chord, at the springing and as near as panel points allow to each eighth. */
    static List<ChordSection> of(DeckArchFrame frame, int eighths) {
        double span = frame.arch().axis().span();
        List<ChordSection> sections = new ArrayList<>();
        for (List<String> chord : frame.leftRib()) {
            for (int eighth = 0; eighth <= eighths; eighth++) {
                int nearest = 0;
                for (int i = 1; i < chord.size(); i++) {
                    if (distance(frame, i, span * eighth / 8)
                            < distance(frame, nearest, span * eighth / 8)) {
                        nearest = i;
                    }
                }
                sections.add(
                        new ChordSection(chord.get(nearest), frame.panelPoints().get(nearest)));
            }
        }
        return sections;
    }

    private static double distance(DeckArchFrame frame, int point, double x) {
        return Math.abs(frame.panelPoints().get(point) - x);
    }
}

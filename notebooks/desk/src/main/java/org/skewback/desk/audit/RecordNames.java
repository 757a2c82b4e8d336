package org.skewback.desk.audit;

import java.util.Locale;
import org.skewback.sheet.Block;

/** What blocks without a number are called. */
final class RecordNames {

    private RecordNames() {}

    /** Gives a block's kind in words, with its symbol where it has one. */
    static String kind(Block block) {
        if (block instanceof Block.Given given) {
            return "given " + given.quantity().symbol();
        } else if (block instanceof Block.Series series) {
            return "givens " + series.symbol();
        }
        return block.getClass().getSimpleName().toLowerCase(Locale.ROOT);
    }
}

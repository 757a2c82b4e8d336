package org.skewback.desk.audit;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;

/** Keeps what is found, to be told later in an order that does not hang on which part was first. */
final class KeptFindings implements Findings {

    private final List<Consumer<Findings>> kept = new ArrayList<>();

    @Override
    public void add(Finding finding) {
        kept.add(to -> to.add(finding));
    }

    @Override
    public void count(Tally tally, long number) {
        kept.add(to -> to.count(tally, number));
    }

    /** Tells all of it, in the order in which it was found. */
    void tell(Findings to) {
        kept.forEach(one -> one.accept(to));
    }
}

package org.skewback.desk.checking;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.skewback.desk.compare.ShownQuantities;
import org.skewback.desk.issue.PackageInfo;
import org.skewback.quantity.Numerals;
import org.skewback.quantity.Quantity;
import org.skewback.sheet.Block;
import org.skewback.sheet.Entry;
import org.skewback.sheet.SheetRecord;
import org.skewback.sheet.Verdict;

/** Why a package may not be issued for construction. */
public final class Readiness {

    private Readiness() {}

    /**
     * Lists the reasons that stand against construction.
     *
     * @param info what the package says of itself
     * @param checking the checker's side
     * @param sheets records of the sheets, in reading order
     * @param content digests of the content to be issued, by path
     * @return one line each; none where it may be issued
     */
    public static List<String> reasons(
            PackageInfo info,
            Checking checking,
            List<SheetRecord> sheets,
            Map<String, String> content) {
        List<String> reasons = new ArrayList<>();
        for (SheetRecord sheet : sheets) {
            for (Entry entry : sheet.checks()) {
                addCheck(reasons, info, checking, sheet, entry);
            }
        }
        for (Remark remark : checking.remarks()) {
            if (!remark.state().equals("closed")) {
                reasons.add(
                        "comment "
                                + remark.id()
                                + " on sheet "
                                + remark.sheet()
                                + " is "
                                + remark.state()
                                + " and not closed");
            }
        }
        for (CheckerNumber number : checking.numbers()) {
            @Nullable Quantity author = author(sheets, number);
            if (author == null) {
                reasons.add(
                        "the checker has a number for "
                                + number.quantity()
                                + " of sheet "
                                + number.sheet()
                                + ", which shows none");
            } else if (!number.agrees(author)) {
                reasons.add(
                        "the checker finds "
                                + number.quantity()
                                + " = "
                                + Numerals.withUnit(number.value())
                                + " on sheet "
                                + number.sheet()
                                + ", the author "
                                + Numerals.withUnit(author));
            }
        }
        Signatures.faults(checking, info, content).values().stream()
                .filter(fault -> !fault.isEmpty())
                .forEach(reasons::add);
        return reasons;
    }

    private static void addCheck(
            List<String> reasons,
            PackageInfo info,
            Checking checking,
            SheetRecord sheet,
            Entry entry) {
        if (entry.verdict() == Verdict.PASSED) {
            return;
        }
        String title = ((Block.Checked) entry.block()).check().title();
        @Nullable Concession concession = concession(checking, sheet.number(), title);
        String check =
                sheet.numbering().name(entry) + ", " + title + ", is " + entry.verdict().inWords();
        if (concession == null) {
            reasons.add(check + " without a concession");
        } else if (!concession.holdsOn(info.date())) {
            reasons.add(check + " and its concession ended on " + concession.until());
        }
    }

    /**
     * Finds the concession for a check.
     *
     * @param checking the checker's side
     * @param sheet number of the sheet
     * @param title title of the check
     * @return the concession, or null where there is none
     */
    public static @Nullable Concession concession(Checking checking, String sheet, String title) {
        for (Concession concession : checking.concessions()) {
            if (concession.sheet().equals(sheet) && concession.check().equals(title)) {
                return concession;
            }
        }
        return null;
    }

    /**
     * Finds the author's quantity that a checker's number stands beside.
     *
     * @param sheets records of the sheets
     * @param number the checker's number
     * @return the quantity, or null where no sheet shows it
     */
    public static @Nullable Quantity author(List<SheetRecord> sheets, CheckerNumber number) {
        for (SheetRecord sheet : sheets) {
            if (sheet.number().equals(number.sheet())) {
                @Nullable Quantity found = ShownQuantities.results(sheet).get(number.quantity());
                return found != null ? found : ShownQuantities.givens(sheet).get(number.quantity());
            }
        }
        return null;
    }

    /**
     * Says which comments, concessions and numbers speak of something that is not there.
     *
     * @param checking the checker's side
     * @param sheets records of the sheets
     * @return one line each
     */
    public static List<String> loose(Checking checking, List<SheetRecord> sheets) {
        Set<String> numbers = new HashSet<>();
        Set<String> checks = new HashSet<>();
        for (SheetRecord sheet : sheets) {
            numbers.add(sheet.number());
            ShownQuantities.checks(sheet)
                    .keySet()
                    .forEach(t -> checks.add(sheet.number() + " " + t));
        }
        List<String> loose = new ArrayList<>();
        for (Remark remark : checking.remarks()) {
            if (!numbers.contains(remark.sheet())) {
                loose.add("comment " + remark.id() + " is on sheet " + remark.sheet());
            }
        }
        for (Concession concession : checking.concessions()) {
            if (!checks.contains(concession.sheet() + " " + concession.check())) {
                loose.add(
                        "a concession is for \""
                                + concession.check()
                                + "\" of sheet "
                                + concession.sheet());
            }
        }
        return loose;
    }
}

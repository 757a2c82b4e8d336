package org.skewback.desk.issue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.skewback.desk.TestIssue;
import org.skewback.desk.render.HtmlPackage;
import org.skewback.desk.render.PackageRenderer;

/** A process that issues a package and stands still at one step, to be killed there. */
public final class StoppingIssue {

    private final String stop;
    private int moves;

    private StoppingIssue(String stop) {
        this.stop = stop;
    }

    /**
     * Issues a package.
     *
     * @param words package folder, folder of issued packages, and the step to stand still at
     * @throws Exception when anything goes wrong
     */
    public static void main(String[] words) throws Exception {
        new StoppingIssue(words[2]).issue(Path.of(words[0]), Path.of(words[1]));
    }

    private void issue(Path source, Path to) throws Exception {
        PackageRenderer pages =
                (run, folder) -> {
                    new HtmlPackage().render(run, folder);
                    at("pages");
                };
        new PackageIssue(
                        (folder, environment) -> {
                            at("kernel");
                            return KilledIssueTest.LATER.kernels().launch(folder, environment);
                        },
                        List.of(pages),
                        Map.of("Skewback", TestIssue.PROGRAM),
                        null,
                        Progress.SILENT,
                        new Stopping())
                .issue(source, to);
        at("end");
    }

    private void at(String step) {
        if (!step.equals(stop)) {
            return;
        }
        System.out.println("at " + step);
        System.out.flush();
        try {
            Thread.sleep(Long.MAX_VALUE);
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
    }

    private final class Stopping implements FileMoves {
        @Override
        public void move(Path from, Path to) throws IOException {
            at("before move " + ++moves);
            REAL.move(from, to);
            at("after move " + moves);
        }

        @Override
        public void remove(Path folder) throws IOException {
            if (stop.equals("half removed") && folder.toString().endsWith(".earlier")) {
                try (Stream<Path> files = Files.list(folder)) {
                    Files.delete(files.filter(Files::isRegularFile).findFirst().orElseThrow());
                }
                at("half removed");
            }
            REAL.remove(folder);
        }

        @Override
        public void settle(Path folder) throws IOException {
            at("settle");
            REAL.settle(folder);
        }
    }
}

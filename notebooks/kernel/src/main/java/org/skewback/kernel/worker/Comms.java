package org.skewback.kernel.worker;

import java.io.IOException;
import java.util.Map;
import java.util.UUID;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.Consumer;

/** The comms that are open, and the targets that cells offer to front ends. */
final class Comms {

    private final Link link;
    private final CellOutput output;
    private final Map<String, Comm> open = new ConcurrentHashMap<>();
    private final Map<String, Consumer<Comm>> targets = new ConcurrentHashMap<>();

    Comms(Link link, CellOutput output) {
        this.link = link;
        this.output = output;
    }

    void offer(String target, Consumer<Comm> opened) {
        targets.put(target, opened);
    }

    Comm open(String target, String json) throws IOException {
        Comm comm = new Comm(this, UUID.randomUUID().toString(), target, json);
        open.put(comm.id(), comm);
        send(comm, "comm_open", json);
        return comm;
    }

    void send(Comm comm, String type, String json) throws IOException {
        output.flush();
        link.send(
                Link.packet(Link.Kind.COMM)
                        .number(Run.ofThisThread())
                        .text(type)
                        .text(comm.id())
                        .text(comm.target())
                        .text(json));
    }

    void forget(Comm comm) {
        open.remove(comm.id());
    }

    /**
     * Takes what a front end sent.
     *
     * @return whether anybody is there to take it
     */
    boolean received(String type, String id, String target, String json) {
        if (type.equals("comm_open")) {
            Consumer<Comm> opened = targets.get(target);
            if (opened == null) {
                return false;
            }
            Comm comm = new Comm(this, id, target, json);
            open.put(id, comm);
            opened.accept(comm);
            return true;
        }
        Comm comm = open.get(id);
        if (comm == null) {
            return false;
        }
        if (type.equals("comm_close")) {
            open.remove(id);
            comm.closedByFrontEnd();
        } else {
            comm.received(json);
        }
        return true;
    }
}

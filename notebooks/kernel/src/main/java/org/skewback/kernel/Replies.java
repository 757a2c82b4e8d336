package org.skewback.kernel;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.Map;
import org.skewback.kernel.evaluation.CellResult;
import org.skewback.kernel.wire.Message;

/** Contents of replies. */
final class Replies {

    static final String VERSION = "0.1.0";

    private Replies() {}

    static ObjectNode object() {
        return JsonNodeFactory.instance.objectNode();
    }

    static ObjectNode ok() {
        return object().put("status", "ok");
    }

    /** The complete answer to a {@code kernel_info_request}. */
    static ObjectNode kernelInfo() {
        String java = Runtime.version().toString();
        ObjectNode reply = ok();
        reply.put("protocol_version", Message.PROTOCOL_VERSION);
        reply.put("implementation", "skewback");
        reply.put("implementation_version", VERSION);
        reply.put("banner", "Skewback " + VERSION + ", Java " + java);
        reply.put("debugger", false);
        reply.putArray("help_links");
        // Neither "debugger" nor "kernel subshells".
        reply.putArray("supported_features");
        ObjectNode language = reply.putObject("language_info");
        language.put("name", "java");
        language.put("version", java);
        language.put("mimetype", "text/x-java");
        language.put("file_extension", ".java");
        language.put("pygments_lexer", "java");
        language.put("codemirror_mode", "text/x-java");
        return reply;
    }

    /** Metadata of a reply to an execute request: the libraries that the cells use, by version. */
    static ObjectNode software(Map<String, String> libraries) {
        ObjectNode metadata = object();
        if (!libraries.isEmpty()) {
            ObjectNode versions = metadata.putObject("skewback").putObject("libraries");
            libraries.forEach(versions::put);
        }
        return metadata;
    }

    static ObjectNode error(String name, String message) {
        ObjectNode reply = object();
        reply.put("status", "error");
        reply.put("ename", name);
        reply.put("evalue", message);
        reply.putArray("traceback").add(name + ": " + message);
        return reply;
    }

    static ObjectNode error(CellResult.Failed failed) {
        ObjectNode reply = object();
        reply.put("status", "error");
        reply.put("ename", failed.name());
        reply.put("evalue", failed.message());
        ArrayNode traceback = reply.putArray("traceback");
        failed.traceback().forEach(traceback::add);
        return reply;
    }
}

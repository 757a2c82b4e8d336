package org.skewback.kernel.evaluation;

/**
 * What front end and cells tell each other over a comm.
 *
 * @param type {@code comm_open}, {@code comm_msg} or {@code comm_close}
 * @param id identifier of the comm
 * @param target name of what is spoken to; empty where only the opening tells it
 * @param json what is told, a JSON object
 */
public record CommMessage(String type, String id, String target, String json) {}

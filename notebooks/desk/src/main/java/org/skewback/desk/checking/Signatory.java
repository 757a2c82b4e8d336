package org.skewback.desk.checking;

/**
 * Who may sign for a role.
 *
 * @param role prepared, checked or approved
 * @param name who
 * @param key public key: X.509, in base64
 */
public record Signatory(String role, String name, String key) {}

package org.skewback.kernel.evaluation;

import java.util.Map;

/**
 * A value that a cell shows while it runs.
 *
 * @param id name of the display, by which it can be shown again; empty where it has none
 * @param again whether it takes the place of what was shown under the same name
 * @param content content by MIME type
 */
public record Shown(String id, boolean again, Map<String, String> content) {}

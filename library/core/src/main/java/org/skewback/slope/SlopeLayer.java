package org.skewback.slope;

/**
 * A layer of ground in a section.
 *
 * @param soil its properties
 * @param bottom the line it reaches down to; that of the lowest layer is not looked at
 */
public record SlopeLayer(Soil soil, ProfileLine bottom) {}

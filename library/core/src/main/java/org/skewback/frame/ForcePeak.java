package org.skewback.frame;

/**
 * Where a force is largest or smallest in the whole structure.
 *
 * @param member the member
 * @param position distance from its start, m
 * @param forces all six forces there
 */
public record ForcePeak(String member, double position, SectionForces forces) {}

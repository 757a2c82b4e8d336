package org.skewback.slope;

/** A surface on which a slope may slide, seen in a section. */
public sealed interface SlipSurface permits SlipCircle, SlipPolygon {}

package org.skewback.frame;

/** Anything that acts on the structure: forces, and deformations imposed on it. */
public sealed interface Load
        permits NodalLoad,
                PointLoad,
                LineLoad,
                LineMoment,
                SelfWeight,
                Warming,
                LackOfFit,
                InitialForce,
                Tendon,
                GroundMovement,
                Dislocation,
                CablePull {}

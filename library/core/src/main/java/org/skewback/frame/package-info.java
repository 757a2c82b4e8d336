/**
 * Three-dimensional frames: a model of nodes, members and supports, and what it does under load.
 *
 * <p><b>Units.</b> SI throughout: m, N, N·m, Pa, kg/m³, K, rad. Tables for reading show kN, kN·m, mm
 * and mrad and say so.
 *
 * <p><b>Global axes.</b> Right-handed: {@code x} along the bridge, {@code y} across, {@code z} up.
 * Displacements are positive along the axes, rotations right-handed about them. Loads and reactions
 * are forces and moments on the structure, positive along and right-handed about the axes; gravity
 * acts along −z.
 *
 * <p><b>Local axes of a member.</b> {@code x} runs from its start to its end (after rigid offsets).
 * {@code z} is upward: it lies in the plane of {@code x} and the member's upward direction, on its
 * side; {@code y} = {@code z} × {@code x}. The upward direction is global z unless another is given;
 * for a vertical member (level length below one millionth of its length) without a given one,
 * {@code y} is global y. A roll angle turns {@code y} and {@code z} about {@code x}, right-handed. So
 * a level member along the bridge has local axes equal to the global ones.
 *
 * <p><b>Forces in a member.</b>
 *
 * <ul>
 *   <li>N, positive in tension;
 *   <li>V_y, V_z: the force with which the part before the section (toward the start) acts on the
 *       part beyond it, along y and z; so V_z is positive at the left end of a loaded beam, and dV/dx
 *       equals the load along the axis;
 *   <li>M_y: bending in the x–z plane, positive with tension on the side of −z (sagging); dM_y/dx =
 *       V_z;
 *   <li>M_z: bending in the x–y plane, positive with tension on the side of −y; dM_z/dx = V_y;
 *   <li>T: torque, positive when its vector points out of the section (right-handed about +x on the
 *       face that looks to the end);
 *   <li>stress σ = N/A − M_y z/I_y − M_z y/I_z, positive in tension.
 * </ul>
 *
 * <p><b>Theory.</b> Here: small displacements, straight members, plane sections with shear flexibility
 * (S. P. Timoshenko, <i>Phil. Mag.</i> 41 (1921) 744), torsion after de Saint-Venant; warping is
 * ignored. Member stiffness and the forces of clamped ends follow from the flexibility of the member
 * (J. S. Przemieniecki, <i>Theory of Matrix Structural Analysis</i>, 1968, ch. 5 and 6), so that what
 * is given along the member is exact for the loads given.
 *
 * <p><b>Beyond.</b> Equilibrium of the slightly deformed structure: {@link
 * org.skewback.frame.SecondOrderAnalysis}; far movements: {@link
 * org.skewback.frame.LargeDisplacementAnalysis}; what makes it buckle: {@link
 * org.skewback.frame.BucklingAnalysis}; construction step by step: {@link
 * org.skewback.frame.StageAnalysis}; vibration and earthquakes: {@link
 * org.skewback.frame.ModalAnalysis}, {@link org.skewback.frame.SpectrumAnalysis} and {@link
 * org.skewback.frame.TimeHistoryAnalysis}. Cables ({@link org.skewback.frame.CableMember}) are exact
 * where the structure is followed, and act by their tangent where cases are added up.
 *
 * <p>Results are a means of design for licensed engineers who know what was left out; they replace
 * neither the local code nor an independent check.
 *
 * <p>Models, loads and results are immutable.
 */
@NullMarked
package org.skewback.frame;

import org.jspecify.annotations.NullMarked;

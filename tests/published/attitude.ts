/**
 * The attitude of a towed jig, quasi-steady, and the planing that follows from it (docs/planing.md).
 *
 * Moments about the line's eye, so that the pull has none: the weight W hangs `a` behind the eye and
 * turns the tail down, the water's force N on the trailer, `b` behind it, lifts the tail. With θ the
 * tail's angle below level and v the level speed,
 *
 *   W a cos θ = N b,  N = ½ρ v² S C_N(θ),  C_N = (π/2) A sin θ cos θ + C_c sin² θ,
 *
 * A the trailer's width over its length: the slender plate of R. T. Jones (NACA Report 835, 1946) and
 * the cross-flow of Allen & Perkins (NACA Report 1048, 1951), C_c that of a flat plate (Hoerner,
 * Fluid-Dynamic Drag, 1965, ch. III); all three from memory. Lift N cos θ over drag N sin θ + ½ρ v² CdA.
 */
export interface Jig {
  /** Under water. */
  weight_N: number;
  /** From the eye back to the weight, and to the middle of the trailer, m. */
  eyeToWeight_m: number;
  eyeToTrailer_m: number;
  trailerLength_m: number;
  trailerWidth_m: number;
  /** Of head and skirt, m². */
  dragArea_m2: number;
}

const WATER_KG_M3 = 999;
/** Cross-flow drag coefficient of a flat plate of finite width (Hoerner 1965, from memory). */
const CROSS_FLOW = 1.2;
const HALVINGS = 60;

export interface Attitude {
  tailDown_rad: number;
  lift_N: number;
  liftToDrag: number;
}

export function attitudeOf(jig: Jig, speed_m_s: number): Attitude {
  const pressure = 0.5 * WATER_KG_M3 * speed_m_s ** 2;
  const area_m2 = jig.trailerLength_m * jig.trailerWidth_m;
  const slender = (Math.PI / 2) * (jig.trailerWidth_m / jig.trailerLength_m);
  const normal_N = (rad: number) => {
    const [sin, cos] = [Math.sin(rad), Math.cos(rad)];
    return pressure * area_m2 * (slender * sin * cos + CROSS_FLOW * sin * sin);
  };
  const moment = (rad: number) =>
    jig.weight_N * jig.eyeToWeight_m * Math.cos(rad) - normal_N(rad) * jig.eyeToTrailer_m;
  let [low, high] = [0, Math.PI / 2];
  for (let i = 0; i < HALVINGS; i++) {
    const middle = (low + high) / 2;
    if (moment(middle) > 0) low = middle;
    else high = middle;
  }
  const force_N = normal_N(low);
  const lift_N = force_N * Math.cos(low);
  const drag_N = force_N * Math.sin(low) + pressure * jig.dragArea_m2;
  return { tailDown_rad: low, lift_N, liftToDrag: lift_N / drag_N };
}

/** A football-head jig with a trailer of 3 in by 1 in. Lengths common practice, no source. */
export function jigOf(ounces: number): Jig {
  return {
    weight_N: ounces * 0.0283495 * 9.80665 * 0.91,
    eyeToWeight_m: 0.01,
    eyeToTrailer_m: 0.06,
    trailerLength_m: 0.076,
    trailerWidth_m: 0.025,
    dragArea_m2: 7e-4
  };
}

/** What draws on the bait besides line, water and bottom, in one step. */
export interface ExternalLoad {
  /** Force, N. */
  readonly x: number;
  readonly z: number;
  /** How the force falls off along x, N/m. */
  readonly stiffness_N_m: number;
  /** Held by something that no pull moves (a hook in a crack). */
  readonly isPinned: boolean;
}

export const NO_LOAD: ExternalLoad = { x: 0, z: 0, stiffness_N_m: 0, isPinned: false };

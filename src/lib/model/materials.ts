/**
 * Line materials: what a name stands for when a scenario gives no values of its own.
 *
 * Densities: PVDF 1750–1780 kg/m³ and nylon 66 1140 kg/m³ from producers' data sheets, UHMWPE 960–975.
 * Moduli: nylon 1.5 GPa at equilibrium moisture (data sheet); fluorocarbon 2–3 GPa drawn, and braid,
 * whose loose weave gives far less than the fibre's 117 GPa, from memory.
 */
export interface LineMaterial {
  readonly density_kg_m3: number;
  readonly youngs_modulus_Pa: number;
  readonly normal_drag: number | 'reynolds';
  readonly tangential_drag: number;
}

export const LINE_MATERIALS = {
  fluorocarbon: material(1780, 2.5e9),
  nylon: material(1140, 1.5e9),
  braid: material(970, 20e9)
} as const;

export type LineMaterialName = keyof typeof LINE_MATERIALS;

function material(density_kg_m3: number, youngs_modulus_Pa: number): LineMaterial {
  return { density_kg_m3, youngs_modulus_Pa, normal_drag: 'reynolds', tangential_drag: 0.01 };
}

/** Lead, kg/m³ (common handbook value): what a jig head is made of when nothing is said. */
export const LEAD_DENSITY_KG_M3 = 11340;

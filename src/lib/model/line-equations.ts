/**
 * The block-tridiagonal system of one step: a symmetric 2×2 block and a right side for each node,
 * and a symmetric block for each piece between two nodes. Typed arrays made once; the step fills
 * them anew. Index 0 is the tip, the last node is the bait, piece i joins nodes i and i + 1.
 */
export class LineEquations {
  /** Places and speeds about which the step is linearised. */
  readonly px: Float64Array;
  readonly pz: Float64Array;
  readonly pvx: Float64Array;
  readonly pvz: Float64Array;
  /** Right side. */
  readonly rx: Float64Array;
  readonly rz: Float64Array;
  /** Diagonal blocks; after the elimination their inverses (except the bait's). */
  readonly dxx: Float64Array;
  readonly dxz: Float64Array;
  readonly dzz: Float64Array;
  /** Off-diagonal blocks with the sign turned: the block of piece i is −b. */
  readonly bxx: Float64Array;
  readonly bxz: Float64Array;
  readonly bzz: Float64Array;
  /** Unit vectors along the pieces, from tip to bait. */
  readonly nx: Float64Array;
  readonly nz: Float64Array;
  /** A second right side: what a metre more of every piece puts on the nodes. */
  readonly sx: Float64Array;
  readonly sz: Float64Array;
  /** Half of the wet length of each piece, m. */
  readonly halfWet_m: Float64Array;

  /** 1 where a piece pulled at the place of linearisation. */
  readonly isTaut: Uint8Array;
  /** 1 where the bottom bore a node at the place of linearisation. */
  readonly isBorne: Uint8Array;
  /** Where the bait was then. */
  readonly bait = { x: 0, z: 0 };

  constructor(readonly nodes: number) {
    const array = () => new Float64Array(nodes);
    this.px = array();
    this.pz = array();
    this.pvx = array();
    this.pvz = array();
    this.rx = array();
    this.rz = array();
    this.dxx = array();
    this.dxz = array();
    this.dzz = array();
    this.bxx = array();
    this.bxz = array();
    this.bzz = array();
    this.sx = array();
    this.sz = array();
    this.nx = array();
    this.nz = array();
    this.halfWet_m = array();
    this.isTaut = new Uint8Array(nodes);
    this.isBorne = new Uint8Array(nodes);
  }

  /** Gaussian elimination from node `first` down to the bait, whose block and right side remain. */
  eliminate(first: number): void {
    const { bxx, bxz, bzz, dxx, dxz, dzz, rx, rz } = this;
    const last = this.nodes - 1;
    for (let i = first; i < last; i++) {
      const det = 1 / (dxx[i] * dzz[i] - dxz[i] * dxz[i]);
      const ixx = dzz[i] * det;
      const ixz = -dxz[i] * det;
      const izz = dxx[i] * det;
      dxx[i] = ixx;
      dxz[i] = ixz;
      dzz[i] = izz;
      const a = bxx[i];
      if (a === 0) continue;
      const b = bxz[i];
      const c = bzz[i];
      const j = i + 1;
      // m = b · inverse; the node below gains −m · b and m · r.
      const m00 = a * ixx + b * ixz;
      const m01 = a * ixz + b * izz;
      const m10 = b * ixx + c * ixz;
      const m11 = b * ixz + c * izz;
      dxx[j] -= m00 * a + m01 * b;
      dxz[j] -= m00 * b + m01 * c;
      dzz[j] -= m10 * b + m11 * c;
      rx[j] += m00 * rx[i] + m01 * rz[i];
      rz[j] += m10 * rx[i] + m11 * rz[i];
    }
  }

  /** Takes the second right side down to the bait, once the blocks are eliminated. */
  eliminateSecond(first: number): void {
    const { bxx, bxz, bzz, dxx, dxz, dzz, sx, sz } = this;
    for (let i = first; i < this.nodes - 1; i++) {
      const qx = dxx[i] * sx[i] + dxz[i] * sz[i];
      const qz = dxz[i] * sx[i] + dzz[i] * sz[i];
      sx[i + 1] += bxx[i] * qx + bxz[i] * qz;
      sz[i + 1] += bxz[i] * qx + bzz[i] * qz;
    }
  }

  /** Given the bait's solution in a right side, puts every other node's into it, up to node `first`. */
  substitute(first: number, rx: Float64Array, rz: Float64Array): void {
    const { bxx, bxz, bzz, dxx, dxz, dzz } = this;
    for (let i = this.nodes - 2; i >= first; i--) {
      const j = i + 1;
      const sx = rx[i] + bxx[i] * rx[j] + bxz[i] * rz[j];
      const sz = rz[i] + bxz[i] * rx[j] + bzz[i] * rz[j];
      rx[i] = dxx[i] * sx + dxz[i] * sz;
      rz[i] = dxz[i] * sx + dzz[i] * sz;
    }
  }
}

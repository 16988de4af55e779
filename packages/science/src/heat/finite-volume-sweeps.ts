/**
 * The inner loops of the finite-volume model: one alternating-direction step over cells stored column by column, each
 * column of one radius from bottom to top. Nothing here knows of jars.
 *
 * Per cell, u is temperature and q the right-hand side of the next solve, both in °C: with (I + A) u = q for one direction,
 * (I - A) u = 2u - q, so no stencil is applied after the first step.
 */

/** Factors of the tridiagonal solves, made once: forward u = q inv + f u(before), backward u += e u(after). */
export interface SweepFactors {
  readonly inv: Float64Array
  readonly f: Float64Array
  readonly e: Float64Array
}

/** Solves along the radius for all heights at once. */
export function sweepRadial(
  u: Float64Array,
  q: Float64Array,
  { inv, f, e }: SweepFactors,
  nr: number,
  nz: number,
): void {
  for (let at = 0; at < nz; at += 1) {
    const rhs = 2 * u[at]! - q[at]!
    q[at] = rhs
    u[at] = rhs * inv[at]!
  }
  for (let i = 1; i < nr; i += 1) {
    const start = i * nz
    for (let at = start, before = start - nz; before < start; at += 1, before += 1) {
      const rhs = 2 * u[at]! - q[at]!
      q[at] = rhs
      u[at] = rhs * inv[at]! + f[at]! * u[before]!
    }
  }
  for (let i = nr - 2; i >= 0; i -= 1) {
    const start = i * nz
    const end = start + nz
    for (let at = start, after = end; at < end; at += 1, after += 1) u[at] = u[at]! + e[at]! * u[after]!
  }
}

/** Solves along the height, four columns side by side so that one need not wait for the other. */
export function sweepAxial(u: Float64Array, q: Float64Array, factors: SweepFactors, nr: number, nz: number): void {
  const { inv, f, e } = factors
  let i = 0
  for (; i + 4 <= nr; i += 4) {
    const a = i * nz
    let ua = 0
    let ub = 0
    let uc = 0
    let ud = 0
    for (
      let pa = a, pb = a + nz, pc = a + 2 * nz, pd = a + 3 * nz, end = a + nz;
      pa < end;
      pa += 1, pb += 1, pc += 1, pd += 1
    ) {
      const ra = 2 * u[pa]! - q[pa]!
      const rb = 2 * u[pb]! - q[pb]!
      const rc = 2 * u[pc]! - q[pc]!
      const rd = 2 * u[pd]! - q[pd]!
      q[pa] = ra
      q[pb] = rb
      q[pc] = rc
      q[pd] = rd
      ua = ra * inv[pa]! + f[pa]! * ua
      ub = rb * inv[pb]! + f[pb]! * ub
      uc = rc * inv[pc]! + f[pc]! * uc
      ud = rd * inv[pd]! + f[pd]! * ud
      u[pa] = ua
      u[pb] = ub
      u[pc] = uc
      u[pd] = ud
    }
    ua = 0
    ub = 0
    uc = 0
    ud = 0
    for (let pa = a + nz - 1, pb = pa + nz, pc = pb + nz, pd = pc + nz; pa >= a; pa -= 1, pb -= 1, pc -= 1, pd -= 1) {
      ua = u[pa]! + e[pa]! * ua
      ub = u[pb]! + e[pb]! * ub
      uc = u[pc]! + e[pc]! * uc
      ud = u[pd]! + e[pd]! * ud
      u[pa] = ua
      u[pb] = ub
      u[pc] = uc
      u[pd] = ud
    }
  }
  for (; i < nr; i += 1) sweepColumn(u, q, factors, i * nz, nz)
}

function sweepColumn(u: Float64Array, q: Float64Array, { inv, f, e }: SweepFactors, start: number, nz: number): void {
  let last = 0
  for (let at = start; at < start + nz; at += 1) {
    const rhs = 2 * u[at]! - q[at]!
    q[at] = rhs
    last = rhs * inv[at]! + f[at]! * last
    u[at] = last
  }
  last = 0
  for (let at = start + nz - 1; at >= start; at -= 1) {
    last = u[at]! + e[at]! * last
    u[at] = last
  }
}

/**
 * One alternating-direction step of the finite-volume model in AssemblyScript, two doubles at a time. Every sum is taken in the
 * order of ../src/heat/finite-volume-plain.ts, which is its oracle to the last bit; what differs is the order of the cells.
 *
 * Memory is laid out by ../src/heat/finite-volume-fast.ts. u, q and the radial factors lie ring by ring, `stride` doubles
 * apart; the axial factors two rings side by side, so that one vector holds the same level of both. Rings are filled up to
 * a multiple of eight and levels to one of four with cells of nothing.
 */

const DOUBLE: usize = 8
const PAIR: usize = 16
/** Of each ring: the shares of its bottom and lid, then their conductances. */
const RING: usize = 4 * DOUBLE

/** Takes heat through bottom and lid off the right-hand side of a ring. */
function addEnds(q: usize, lowShare: f64, highShare: f64, waterC: f64, steamC: f64, nz: usize): void {
  const high = q + (nz - 1) * DOUBLE
  store<f64>(q, load<f64>(q) - lowShare * waterC)
  store<f64>(high, load<f64>(high) - highShare * steamC)
}

/** Heat flow through bottom and lid. [W] */
function endsW(u: usize, rings: usize, nr: usize, nz: usize, stride: usize, waterC: f64, steamC: f64): f64 {
  let sum: f64 = 0
  const row = stride * DOUBLE
  const high = (nz - 1) * DOUBLE
  for (let i: usize = 0; i < nr; i += 1) {
    const share = rings + i * RING
    sum += load<f64>(share, 16) * (waterC - load<f64>(u)) + load<f64>(share, 24) * (steamC - load<f64>(u + high))
    u += row
  }
  return sum
}

/** Takes heat through the side off the right-hand side of the last ring. */
function addSide(q: usize, side: usize, nz: usize, waterLevels: usize, waterC: f64, steamC: f64): void {
  for (let j: usize = 0; j < nz; j += 1) {
    const share = load<f64>(side + j * PAIR)
    store<f64>(q, load<f64>(q) - share * (j < waterLevels ? waterC : steamC))
    q += DOUBLE
  }
}

/** Elimination along the radius for all heights, from the axis outward. */
function radialForward(u: usize, q: usize, inv: usize, f: usize, nr: usize, stride: usize): void {
  const two = f64x2.splat(2)
  const row = stride * DOUBLE
  for (let end = u + row; u < end; u += PAIR) {
    const rhs = f64x2.sub(f64x2.mul(two, v128.load(u)), v128.load(q))
    v128.store(q, rhs)
    v128.store(u, f64x2.mul(rhs, v128.load(inv)))
    q += PAIR
    inv += PAIR
  }
  f += row
  for (const end = u + (nr - 1) * row; u < end; u += 2 * PAIR) {
    const a = f64x2.sub(f64x2.mul(two, v128.load(u)), v128.load(q))
    const b = f64x2.sub(f64x2.mul(two, v128.load(u, 16)), v128.load(q, 16))
    v128.store(q, a)
    v128.store(q, b, 16)
    v128.store(u, f64x2.add(f64x2.mul(a, v128.load(inv)), f64x2.mul(v128.load(f), v128.load(u - row))))
    v128.store(
      u,
      f64x2.add(f64x2.mul(b, v128.load(inv, 16)), f64x2.mul(v128.load(f, 16), v128.load(u - row, 16))),
      16,
    )
    q += 2 * PAIR
    inv += 2 * PAIR
    f += 2 * PAIR
  }
}

/** Substitution along the radius for one ring, from the one outside it. */
function radialBack(u: usize, e: usize, stride: usize): void {
  const row = stride * DOUBLE
  for (const end = u + row; u < end; u += 2 * PAIR) {
    v128.store(u, f64x2.add(v128.load(u), f64x2.mul(v128.load(e), v128.load(u + row))))
    v128.store(u, f64x2.add(v128.load(u, 16), f64x2.mul(v128.load(e, 16), v128.load(u + row, 16))), 16)
    e += 2 * PAIR
  }
}

/** Elimination of two levels of two rings side by side, from below; gives the upper one. */
// @ts-ignore: the decorator is AssemblyScript's
@inline
function upTwo(u: usize, q: usize, factors: usize, line: usize, row: usize, below: v128): v128 {
  const two = f64x2.splat(2)
  const a = f64x2.sub(f64x2.mul(two, v128.load(u)), v128.load(q))
  const b = f64x2.sub(f64x2.mul(two, v128.load(u + row)), v128.load(q + row))
  v128.store(q, a)
  v128.store(q + row, b)
  const low = f64x2.add(
    f64x2.mul(v128.shuffle<f64>(a, b, 0, 2), v128.load(factors)),
    f64x2.mul(v128.load(factors, 16), below),
  )
  const high = f64x2.add(
    f64x2.mul(v128.shuffle<f64>(a, b, 1, 3), v128.load(factors, 48)),
    f64x2.mul(v128.load(factors, 64), low),
  )
  v128.store(line, low)
  v128.store(line, high, 64)
  return high
}

/** Substitution of two levels of two rings, from above; gives the lower one. */
// @ts-ignore: the decorator is AssemblyScript's
@inline
function downTwo(u: usize, factors: usize, line: usize, row: usize, above: v128): v128 {
  const high = f64x2.add(v128.load(line, 64), f64x2.mul(v128.load(factors, 80), above))
  const low = f64x2.add(v128.load(line), f64x2.mul(v128.load(factors, 32), high))
  v128.store(u, v128.shuffle<f64>(low, high, 0, 2))
  v128.store(u + row, v128.shuffle<f64>(low, high, 1, 3))
  return low
}

/** Solves along the height of eight rings at once, so that none waits for another; `line` is room for them. */
function axialEight(u: usize, q: usize, factors: usize, line: usize, levels: usize, stride: usize): void {
  const row = stride * DOUBLE
  const pair = row * 2
  // Of two rings: inv, f and e of each level.
  const block = levels * 3 * PAIR
  const end = u + levels * DOUBLE
  let a = f64x2.splat(0)
  let b = a
  let c = a
  let d = a
  let at = u
  while (at < end) {
    a = upTwo(at, q, factors, line, row, a)
    b = upTwo(at + pair, q + pair, factors + block, line + 16, row, b)
    c = upTwo(at + pair * 2, q + pair * 2, factors + block * 2, line + 32, row, c)
    d = upTwo(at + pair * 3, q + pair * 3, factors + block * 3, line + 48, row, d)
    at += PAIR
    q += PAIR
    factors += 6 * PAIR
    line += 8 * PAIR
  }
  a = f64x2.splat(0)
  b = a
  c = a
  d = a
  while (at > u) {
    at -= PAIR
    factors -= 6 * PAIR
    line -= 8 * PAIR
    a = downTwo(at, factors, line, row, a)
    b = downTwo(at + pair, factors + block, line + 16, row, b)
    c = downTwo(at + pair * 2, factors + block * 2, line + 32, row, c)
    d = downTwo(at + pair * 3, factors + block * 3, line + 48, row, d)
  }
}

// Of the one run an instance of this module is made for.
let stepS: f64 = 0
let nr: usize = 0
let nz: usize = 0
let stride: usize = 0
let waterLevels: usize = 0
let u: usize = 0
let q: usize = 0
let radial: usize = 0
let axial: usize = 0
let rings: usize = 0
let side: usize = 0
let line: usize = 0

/** Said once, before the first step: the step, the cells, how many levels of the side stand in water, and where all lies. */
export function begin(
  theStepS: f64,
  theNr: usize,
  theNz: usize,
  theStride: usize,
  theWaterLevels: usize,
  uAt: usize,
  qAt: usize,
  radialAt: usize,
  axialAt: usize,
  ringsAt: usize,
  sideAt: usize,
  lineAt: usize,
): void {
  stepS = theStepS
  nr = theNr
  nz = theNz
  stride = theStride
  waterLevels = theWaterLevels
  u = uAt
  q = qAt
  radial = radialAt
  axial = axialAt
  rings = ringsAt
  side = sideAt
  line = lineAt
}

/** One step: water and steam at its start, its middle and its end. Gives the heat that has come in since the run began. [J] */
export function step(
  enteredJ: f64,
  waterFromC: f64,
  steamFromC: f64,
  waterMiddleC: f64,
  steamMiddleC: f64,
  waterToC: f64,
  steamToC: f64,
): f64 {
  const half = stepS / 2
  const row = stride * DOUBLE
  const levels = (nz + 1) & ~1
  const filled = (nr + 7) & ~7
  const plane = filled * row
  const last = (nr - 1) * row
  enteredJ += half * endsW(u, rings, nr, nz, stride, waterFromC, steamFromC)
  for (let i: usize = 0; i < nr; i += 1) {
    const share = rings + i * RING
    addEnds(q + i * row, load<f64>(share), load<f64>(share, 8), waterFromC, steamFromC, nz)
  }
  addSide(q + last, side, nz, waterLevels, waterMiddleC, steamMiddleC)
  radialForward(u, q, radial, radial + plane, nr, stride)
  for (let j: usize = 0; j < nz; j += 1) {
    const conductance = load<f64>(side + j * PAIR, 8)
    enteredJ += stepS * conductance * ((j < waterLevels ? waterMiddleC : steamMiddleC) - load<f64>(u + last + j * DOUBLE))
  }
  addSide(q + last, side, nz, waterLevels, waterMiddleC, steamMiddleC)
  let solved = nr - 1
  for (let first = filled; first > 0; ) {
    first -= 8
    // One ring further in than the eight: its own turn comes after theirs have changed.
    while (solved > 0 && solved >= first) {
      solved -= 1
      radialBack(u + solved * row, radial + 2 * plane + solved * row, stride)
    }
    for (let i = first; i < nr && i < first + 8; i += 1) {
      const share = rings + i * RING
      addEnds(q + i * row, load<f64>(share), load<f64>(share, 8), waterToC, steamToC, nz)
    }
    axialEight(u + first * row, q + first * row, axial + (first >> 1) * levels * 3 * PAIR, line, levels, stride)
  }
  return enteredJ + half * endsW(u, rings, nr, nz, stride, waterToC, steamToC)
}

/**
 * The same steps in a compiled kernel (../../kernel/heat-step.ts), two doubles at a time: four times as fast and the same to
 * the last bit. Where the engine cannot run it, or may not, there is none.
 */
import type { PreparedSteps, StepKernel } from './finite-volume-steps.ts'
import { HEAT_STEP_BASE64 } from './heat-step-bytes.ts'

/** What is used of WebAssembly: every engine has it, the language's own library does not describe it. */
interface Engine {
  readonly Module: new (bytes: Uint8Array) => object
  readonly Instance: new (module: object) => { readonly exports: unknown }
}

interface KernelExports {
  readonly memory: { readonly buffer: ArrayBuffer; readonly grow: (pages: number) => number }
  readonly begin: (stepS: number, ...cellsAndPlaces: number[]) => void
  readonly step: (
    enteredJ: number,
    ...waterAndSteamC: readonly [number, number, number, number, number, number]
  ) => number
}

const PAGE_BYTES = 65_536
const DOUBLE_BYTES = 8

/** Compiled once, at the first run; null where that is refused. */
let compiled: object | null | undefined

/** Null where there is no such engine. */
export function createFastKernel(prepared: PreparedSteps): StepKernel | null {
  const { grid, stepS, startC, startQ, radial, axial, lowShare, highShare, sideShare } = prepared
  const { nr, nz, outward, upward, bottom, inWater } = grid
  const lastRing = (nr - 1) * nz
  const places = placesOf(nr, nz)
  const { stride, levels, plane } = places
  const kernel = startKernel(places.doublesCount)
  if (!kernel) return null
  const memory = new Float64Array(kernel.memory.buffer)

  for (let i = 0; i < nr; i += 1) {
    const ring = i * stride
    const from = i * nz
    memory.set(startC.subarray(from, from + nz), places.u + ring)
    memory.set(startQ.subarray(from, from + nz), places.q + ring)
    memory.set(radial.inv.subarray(from, from + nz), places.radial + ring)
    memory.set(radial.f.subarray(from, from + nz), places.radial + plane + ring)
    memory.set(radial.e.subarray(from, from + nz), places.radial + 2 * plane + ring)
    // inv, f and e of a level, each for two rings side by side.
    const pair = places.axial + Math.floor(i / 2) * levels * 6 + (i % 2)
    for (let j = 0; j < nz; j += 1) {
      memory[pair + j * 6] = axial.inv[from + j]!
      memory[pair + j * 6 + 2] = axial.f[from + j]!
      memory[pair + j * 6 + 4] = axial.e[from + j]!
    }
    memory.set([lowShare[i]!, highShare[i]!, bottom[i]!, upward[from + nz - 1]!], places.rings + i * 4)
  }
  for (let j = 0; j < nz; j += 1) memory.set([sideShare[j]!, outward[lastRing + j]!], places.side + j * 2)

  // Water stands from the bottom up.
  const waterLevels = inWater.filter(Boolean).length
  const addresses = [places.u, places.q, places.radial, places.axial, places.rings, places.side, places.line].map(
    (place) => place * DOUBLE_BYTES,
  )
  kernel.begin(stepS, nr, nz, stride, waterLevels, ...addresses)
  let enteredJ = 0
  return {
    step: (from, middle, to) => {
      enteredJ = kernel.step(enteredJ, from.waterC, from.steamC, middle.waterC, middle.steamC, to.waterC, to.steamC)
    },
    fieldC: () => {
      const fieldC = new Float64Array(nr * nz)
      for (let i = 0; i < nr; i += 1) {
        const ring = places.u + i * stride
        fieldC.set(memory.subarray(ring, ring + nz), i * nz)
      }
      return fieldC
    },
    enteredJ: () => enteredJ,
  }
}

/** Where each part begins, in doubles. Rings are filled up to eight and levels to four with cells of nothing. */
function placesOf(nr: number, nz: number) {
  // A cache line more than asked: rings a power of two apart would crowd each other out of the cache.
  const stride = upTo(4, nz) + 8
  const levels = upTo(2, nz)
  const plane = upTo(8, nr) * stride
  let next = 0
  const take = (count: number) => {
    const at = next
    next += count
    return at
  }
  const u = take(plane)
  const q = take(plane)
  const radial = take(3 * plane)
  const axial = take(3 * upTo(8, nr) * levels)
  const rings = take(4 * nr)
  const side = take(2 * nz)
  const line = take(8 * levels)
  return { stride, levels, plane, u, q, radial, axial, rings, side, line, doublesCount: next }
}

function upTo(step: number, count: number): number {
  return Math.ceil(count / step) * step
}

function startKernel(doublesCount: number): KernelExports | null {
  const { WebAssembly: engine } = globalThis as { readonly WebAssembly?: Engine }
  if (!engine || compiled === null) return null
  try {
    compiled ??= new engine.Module(bytesOf(HEAT_STEP_BASE64))
    const kernel = new engine.Instance(compiled).exports as KernelExports
    const missing = doublesCount * DOUBLE_BYTES - kernel.memory.buffer.byteLength
    if (missing > 0) kernel.memory.grow(Math.ceil(missing / PAGE_BYTES))
    return kernel
  } catch {
    // No vector instructions, a page that forbids compiling, or no room for so many cells: plain numbers do.
    compiled ??= null
    return null
  }
}

const BASE64 = 'ABCDEFGHIJKLMNOPQRSTUVWXYZabcdefghijklmnopqrstuvwxyz0123456789+/'

/** The language's own library has no reader for this. */
function bytesOf(text: string): Uint8Array {
  const digits = text.replace(/=+$/, '')
  const bytes = new Uint8Array(Math.floor((digits.length * 3) / 4))
  let bits = 0
  let bitCount = 0
  let at = 0
  for (const digit of digits) {
    bits = ((bits << 6) | BASE64.indexOf(digit)) & 0xffff
    bitCount += 6
    if (bitCount < 8) continue
    bitCount -= 8
    bytes[at] = (bits >> bitCount) & 0xff
    at += 1
  }
  return bytes
}

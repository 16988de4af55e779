/** Solving a small symmetric, positive definite system by Cholesky's factor. Matrices are rows one after another. */

/**
 * The lower factor L of A = L Lᵀ, written into `a` itself. False where A is not positive definite to working precision.
 *
 * @source golub-van-loan-2013 algorithm 4.2.1
 */
export function choleskyInPlace(a: Float64Array, size: number): boolean {
  for (let j = 0; j < size; j += 1) {
    let pivot = a[j * size + j]!
    for (let k = 0; k < j; k += 1) pivot -= a[j * size + k]! ** 2
    if (!(pivot > 0)) return false
    const root = Math.sqrt(pivot)
    a[j * size + j] = root
    for (let i = j + 1; i < size; i += 1) {
      let sum = a[i * size + j]!
      for (let k = 0; k < j; k += 1) sum -= a[i * size + k]! * a[j * size + k]!
      a[i * size + j] = sum / root
    }
  }
  return true
}

/** x of L Lᵀ x = b, written into `b`.  @source golub-van-loan-2013 algorithms 3.1.1 and 3.1.2 */
export function choleskySolveInPlace(factor: Float64Array, size: number, b: Float64Array): void {
  for (let i = 0; i < size; i += 1) {
    let sum = b[i]!
    for (let k = 0; k < i; k += 1) sum -= factor[i * size + k]! * b[k]!
    b[i] = sum / factor[i * size + i]!
  }
  for (let i = size - 1; i >= 0; i -= 1) {
    let sum = b[i]!
    for (let k = i + 1; k < size; k += 1) sum -= factor[k * size + i]! * b[k]!
    b[i] = sum / factor[i * size + i]!
  }
}

/** ln of the determinant of L Lᵀ.  @source golub-van-loan-2013 */
export function choleskyLogDeterminant(factor: Float64Array, size: number): number {
  let sum = 0
  for (let i = 0; i < size; i += 1) sum += 2 * Math.log(factor[i * size + i]!)
  return sum
}

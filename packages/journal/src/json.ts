/** Plain data: what survives JSON, SQL and a file on a stick. Leaves out: which shape a body must have (kinds/). */
import canonicalize from 'canonicalize'

export type Json = null | boolean | number | string | readonly Json[] | { readonly [key: string]: Json | undefined }

/**
 * The one text of a value that everybody hashes alike: RFC 8785 (sorted keys, shortest numbers, no spaces).
 *
 * @throws {Error} on NaN, Infinity, a lone surrogate, a circular value or nothing at all.
 * @source rfc-8785
 */
export function canonicalJson(value: unknown): string {
  const text = canonicalize(value)
  if (text === undefined) throw new TypeError('a value with no JSON form cannot be written in the book')
  return text
}

/** The value without its undefined members, as reading the book back will give it. */
export function plain<T>(value: T): T {
  return JSON.parse(canonicalJson(value)) as T
}

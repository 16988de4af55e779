/** A time-ordered UUID (version 7): 48 bits of time, then 74 random ones. @source rfc-9562 section 5.7 */
export function newId(nowMs: number = Date.now(), random = crypto.getRandomValues(new Uint8Array(10))): string {
  const time = nowMs.toString(16).padStart(12, '0')
  const bytes = [...random]
  bytes[0] = (bytes[0]! & 0x0f) | 0x70
  bytes[2] = (bytes[2]! & 0x3f) | 0x80
  const rest = bytes.map((byte) => byte.toString(16).padStart(2, '0')).join('')
  return `${time.slice(0, 8)}-${time.slice(8)}-${rest.slice(0, 4)}-${rest.slice(4, 8)}-${rest.slice(8)}`
}

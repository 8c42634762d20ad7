/** @returns the bytes in base 64 (RFC 4648), in pieces so that large pictures do not overflow the stack. */
export const toBase64 = (bytes: Uint8Array): string => {
  let binary = ''
  for (let at = 0; at < bytes.length; at += 0x8000) binary += String.fromCharCode(...bytes.subarray(at, at + 0x8000))
  return btoa(binary)
}

/** @returns the bytes as a `data:` address. */
export const toDataAddress = (type: string, bytes: Uint8Array): string => `data:${type};base64,${toBase64(bytes)}`

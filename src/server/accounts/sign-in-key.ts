/**
 * A sign-in name as it is compared: nobody is refused for a capital letter or a space, and no two accounts look alike.
 * @example signInKey(' Ana  Ruiz') // 'ana ruiz'
 */
export function signInKey(name: string): string {
  return name.normalize('NFKC').trim().replace(/\s+/g, ' ').toLowerCase();
}

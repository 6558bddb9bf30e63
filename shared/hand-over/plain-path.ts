/** Names that Windows keeps for devices, whatever ending they have (its documentation of file names, from memory). */
const DEVICES = /^(con|prn|aux|nul|com\d|lpt\d)(\.|$)/i;
const PART = /^[A-Za-z0-9][A-Za-z0-9._-]*$/;
/** Well below what any system or program refuses. */
const LONGEST = 180;

/**
 * Whether a file may have this name in a packet. Plain letters and figures alone: what leads out of a folder, means a
 * device, looks like another name or becomes one on another system cannot be written with them.
 * @example isPlainPath('evidence/001-a.jpg') // true; not '../a', 'C:/a', 'a.', 'NUL.txt', 'a\u202egpj.exe'
 */
export function isPlainPath(path: string): boolean {
  const parts = path.split('/');
  return (
    path.length <= LONGEST &&
    parts.every((part) => PART.test(part) && !part.endsWith('.') && !DEVICES.test(part))
  );
}

/** What is one name on a system that does not tell capital letters: Windows and macOS do not. */
export function foldPath(path: string): string {
  return path.toLowerCase();
}

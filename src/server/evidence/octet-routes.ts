/** Whether a route takes the bytes of files, as they come; told before its body is read. */
export function isForOctets(path: string): boolean {
  return path === '/api/incidents/:id/evidence/uploads/:upload';
}

import type { Call } from './call.js';

/**
 * Whether a call holds anything at all. One touch is enough: what is missing is asked while help is on its way.
 * @example callIsIncident({ said: 'help', craftNamed: ['PWC 7'] }) // true
 * @example callIsIncident({ caller: {} }) // false
 */
export function callIsIncident(call: Call): boolean {
  return holdsSomething(call);
}

function holdsSomething(value: unknown): boolean {
  if (typeof value === 'string') return value.trim() !== '';
  if (typeof value !== 'object' || value === null) return value !== undefined && value !== null;
  return Object.values(value).some(holdsSomething);
}

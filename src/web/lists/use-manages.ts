import { useSession } from '../session/session.js';

/** Whether whoever is there may add and change what managers keep. */
export function useManages(): boolean {
  const { me } = useSession();
  return me?.role === 'manager' || me?.role === 'administrator';
}

import { useEffect, useState } from 'preact/hooks';
import { clockOffsetS } from '../device/clock-offset.js';

const TICK_MS = 20_000;

/** Now by the service's clock, in milliseconds since the Unix epoch: a wrong clock of the phone moves no deadline. */
export const nowByService = (): number => Date.now() - (clockOffsetS() ?? 0) * 1000;

/** The same in a component, which draws anew as time goes on. */
export function useNow(): number {
  const [now, setNow] = useState(nowByService);
  useEffect(() => {
    const ticking = setInterval(() => setNow(nowByService()), TICK_MS);
    return () => clearInterval(ticking);
  }, []);
  return now;
}

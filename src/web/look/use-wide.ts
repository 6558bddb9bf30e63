import { useEffect, useState } from 'preact/hooks';

const wide = matchMedia('(width >= 60rem)');

/** Whether there is the room of a desk; on paper a table has it. */
export function useWide(): boolean {
  const [is, setIs] = useState(wide.matches);
  useEffect(() => {
    const look = (): void => setIs(wide.matches);
    look();
    wide.addEventListener('change', look);
    return () => wide.removeEventListener('change', look);
  }, []);
  return is;
}

import { useSession } from '../session/session.js';
import { DaySheet } from './day-sheet.js';
import { CounselStart, DeviceStart } from './plain-start.js';

/** The first page, for whoever is there. */
export default function TodayPage() {
  const { me } = useSession();
  if (me === null) return <DeviceStart />;
  return me.role === 'counsel' ? <CounselStart /> : <DaySheet />;
}

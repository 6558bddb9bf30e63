import { useSession } from '../session/session.js';
import { DeviceOutings } from './device-outings.js';
import { Outings } from './outings.js';
import { useArrivals } from './outing-queue.js';
import './outing.css';

/** What is out, late and in, and one press for what came back. */
export default function OutAndBackPage() {
  const { me } = useSession();
  useArrivals();
  return me === null ? <DeviceOutings /> : <Outings />;
}

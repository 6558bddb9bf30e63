export { type Actor, CurrentActor, CurrentPerson, type DeviceActor, type PersonActor } from './actor.js';

import { MayUse } from '../platform/http/may-use.js';

/** Who reads the fleet: everyone who works here. Counsel sees craft in the incidents that it was assigned. */
export const StaffMay = (): MethodDecorator => MayUse('staff', 'manager', 'administrator');

/** Who adds to the log of a craft: also a shared device, which writes and reads nothing. */
export const StaffOrDeviceMay = (): MethodDecorator => MayUse('staff', 'manager', 'administrator', 'device');

/** Who changes craft, stations, places and policies, and reads policies. */
export const ManagersMay = (): MethodDecorator => MayUse('manager', 'administrator');

/** Who names the owner's amount. */
export const OwnerMay = (): MethodDecorator => MayUse('administrator');

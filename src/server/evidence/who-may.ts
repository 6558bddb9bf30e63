import { MayUse } from '../platform/http/may-use.js';

/** Who reads evidence: everyone who works here, and counsel in the incidents that it was assigned. */
export const ReadersMay = (): MethodDecorator => MayUse('staff', 'manager', 'administrator', 'counsel');

/** Who sends a file: also a shared device, which adds and reads nothing. */
export const SendersMay = (): MethodDecorator => MayUse('staff', 'manager', 'administrator', 'device');

export const StaffMay = (): MethodDecorator => MayUse('staff', 'manager', 'administrator');

export const ManagersMay = (): MethodDecorator => MayUse('manager', 'administrator');

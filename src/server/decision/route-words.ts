import { MayUse } from '../platform/http/may-use.js';

/** Who reads decisions: everyone who works here, and counsel in the incidents assigned to it. */
export const ReadersMay = (): MethodDecorator => MayUse('staff', 'manager', 'administrator', 'counsel');

/** Who signs and records filings. */
export const ManagersMay = (): MethodDecorator => MayUse('manager', 'administrator');

/** Who notes what an operator was told: whoever stood at the dock. */
export const StaffMay = (): MethodDecorator => MayUse('staff', 'manager', 'administrator');

export const INCIDENT = { params: { id: 'd4e8b7a0-3c62-4f1d-a6a7-1b2c3d4e5f03' } };
export const NO_INCIDENT = { 404: 'There is no incident at this address.' };
export const NOT_NOW = { 409: 'That may not be done as the duty stands: every reason is named by its code.' };

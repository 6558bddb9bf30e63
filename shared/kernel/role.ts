/**
 * What a person may do at the desk. Counsel reads the incidents that were assigned to it, privileged notes among them,
 * and changes nothing.
 */
export const ROLES = ['staff', 'manager', 'administrator', 'counsel'] as const;

export type Role = (typeof ROLES)[number];

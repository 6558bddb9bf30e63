/** That counsel may read an incident, from when to when. */
export interface CounselAssignment {
  id: string;
  /** Id of the account, of the role counsel. */
  account: string;
  name: string;
  assignedAt: string;
  assignedBy: string;
  endedAt?: string;
  endedBy?: string;
}

/** Whom an incident is assigned to, and was: written by the service, so that its history is in the log. */
export interface AssignmentsSection {
  counsel?: CounselAssignment[];
}

/** The accounts of counsel that read the incident now: `assignedAccounts({})` is `[]`. */
export function assignedAccounts({ counsel = [] }: AssignmentsSection): string[] {
  return counsel.filter(({ endedAt }) => endedAt === undefined).map(({ account }) => account);
}

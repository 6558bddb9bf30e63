import type { SectionName } from '../../../shared/record/incident-record.js';
import { useOutbox } from '../device/outbox.js';

/** What is still on this device of what was added to a section. */
export function useWaiting<Addition>(incident: string, section: SectionName): readonly Addition[] {
  return useOutbox(incident).flatMap((item) =>
    item.kind === 'request' && item.path.endsWith(`/sections/${section}/additions`)
      ? [item.body as Addition]
      : [],
  );
}

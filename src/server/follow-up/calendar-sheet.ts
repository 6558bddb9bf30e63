import ical, {
  ICalCalendarMethod,
  ICalEventClass,
  ICalEventStatus,
  ICalEventTransparency,
} from 'ical-generator';
import type { TaskTemplate } from '../../../shared/follow-up/task-template.js';
import type { TaskRow } from './database/task.row.js';

/** A task, and the incident that it belongs to. */
export interface TaskAt {
  readonly task: TaskRow;
  readonly reference: string;
}

/** Programs ask again so often at most. */
const REFRESH_S = 15 * 60;

const WHERE =
  'Look it up in the incident desk. A calendar passes many hands, so it does not say what happened.';

/**
 * Tasks as a calendar (RFC 5545). Each has the UID and, as SEQUENCE, the version of its task, so that a program that
 * knows it already changes it in its place; what was superseded is CANCELLED, what was done stays and takes no time.
 */
export function writeCalendar(tasks: readonly TaskAt[], templates: readonly TaskTemplate[]): string {
  const titles = new Map(templates.map(({ id, title }) => [id, title]));
  const calendar = ical({
    prodId: { company: 'Incident desk', product: 'Tasks', language: 'EN' },
    name: 'Incident desk',
    method: ICalCalendarMethod.PUBLISH,
    ttl: REFRESH_S,
    events: tasks.flatMap(({ task, reference }) => {
      if (task.dueAt === null) return [];
      const words = wordsOf(task, titles.get(task.template ?? ''));
      return {
        id: task.id,
        sequence: task.version - 1,
        start: new Date(task.dueAt),
        stamp: new Date(task.updatedAt),
        created: new Date(task.createdAt),
        lastModified: new Date(task.updatedAt),
        summary: `${task.state === 'done' ? 'Done: ' : ''}${reference}: ${words}`,
        description: WHERE,
        status: task.state === 'superseded' ? ICalEventStatus.CANCELLED : ICalEventStatus.CONFIRMED,
        transparency: ICalEventTransparency.TRANSPARENT,
        class: ICalEventClass.PRIVATE,
      };
    }),
  });
  // Every line ends in a line break, the last one too (RFC 5545, 3.1).
  return `${calendar.toString()}\r\n`;
}

/**
 * What a task is called outside the house. Titles are made of words of forms and law; only the name of a craft may have
 * been typed into a record, and the title of a task that somebody added certainly was: neither goes out.
 */
function wordsOf({ title }: TaskRow, template: string | undefined): string {
  if (template === undefined) return 'a task that somebody added';
  return template.includes('{craft}') ? template.replaceAll('{craft}', 'our craft') : title;
}

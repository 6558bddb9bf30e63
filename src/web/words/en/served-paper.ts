import { requests } from './requests.js';

/** For whoever takes a paper at the counter. */
export const servedPaper = {
  title: 'A paper was served',
  lead: 'Somebody brought a paper of a court or a lawyer, or one came by mail. You need not read it.',
  say: [
    'Take it. Be polite; say that you will give it to the manager.',
    'Give your name if they ask. Say nothing about any incident, and sign for nothing but having received it.',
    'Do not throw anything away, and do not change anything, on account of it.',
    'Put the paper with its envelope where the manager finds it, and tell the manager today.',
  ],
  from: 'Who brought it, or whose name stands on it',
  way: 'How it came',
  ways: requests.ways,
  receivedAt: 'When it came',
  receivedAtHint: (zone: string) => `Left empty: just now. Times in ${zone}.`,
  notATime: 'Must be a day and a time.',
  incident: 'Which incident it is about, if you know',
  incidentNone: 'I do not know',
  note: 'Where the paper lies now, and what they said',
  needed: 'Write who brought it.',
  wayNeeded: 'Say how it came.',
  submit: 'Enter that it came',
  kept: 'Kept on this device, and sent as soon as there is signal. Tell the manager now.',
  another: 'Another paper came',
  photograph: 'Photograph the paper',
  photographHint:
    'Only managers and counsel see these pictures. They go to the incident that you chose; without one, keep the paper itself.',
  pictures: (count: number) => `${count} ${count === 1 ? 'picture' : 'pictures'} kept`,
  notKept: 'It could not be kept on this device: write it on paper, and tell the manager.',
};

export type ServedPaperWords = typeof servedPaper;

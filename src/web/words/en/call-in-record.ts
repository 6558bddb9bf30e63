/** What a call writes into the timeline. The record is in English, whoever reads the page. */
export const callInRecord = {
  craft: (names: string) => `Craft: ${names}.`,
  where: (where: string) => `Where: ${where}.`,
  people: (count: string) => `Aboard: ${count}.`,
  accounted: (answer: string) => `Everyone accounted for? ${answer}.`,
  hurt: (answer: string) => `Anyone hurt? ${answer}.`,
  happened: (what: string) => `What happened: ${what}.`,
  words: (words: string) => `Said: ${words}`,
  caller: (name: string) => `Told by ${name}.`,
  callBack: (number: string) => `Call back on ${number}.`,
  when: (when: string) => `When, as told: ${when}.`,
  whyNow: (why: string) => `Told now because: ${why}.`,
  takenBack: (what: string) => `Taken back, pressed by mistake: ${what}.`,
  paper: 'Typed in from a sheet of paper.',
};

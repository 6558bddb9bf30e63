/** Reasons that the desk itself gives for a change. The record is in English, whoever reads the page. */
export const recordReasons = {
  both: 'Two people wrote at the same time: the words of both are kept.',
};

/** A page imports its style sheet; the build turns that into a file of its own. */
declare module '*.css';

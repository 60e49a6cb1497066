/**
 * The version of the notebook's file. Raise it with a migration in electron/notebook/migrations.ts and a line here.
 *
 * 1 - records as JSON by kind, the journal of Changes, preferences.
 * 2 - readings off the scale and the chronograph, the string, the button, look-overs part by part, numbered arrows. Records of version 1
 *     are read as they are, with these blank.
 * 3 - trials, pictures of targets, score sheets; the end a shot was shot in, and why one was left out. Earlier records are read as they are.
 * 4 - sight marks, the sight's scale, speeds along the flight. Earlier records are read as they are.
 */
export const NOTEBOOK_VERSION = 4;

/**
 * The version of the notebook's file. Raise it with a migration in electron/notebook/migrations.ts and a line here.
 *
 * 1 - records as JSON by kind, the journal of Changes, preferences.
 */
export const NOTEBOOK_VERSION = 1;

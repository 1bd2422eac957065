/** Why a file cannot be opened, in words for its reader. */
export class UnreadableFile extends Error {}

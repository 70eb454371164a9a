/** A reply to who was right, where something beside it says that: why alone. */
export const withoutRight = (reply: string): string => reply.replace(/^Right\. /, '');

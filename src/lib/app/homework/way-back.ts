/** From a lesson to the homework that asked for it. */
export interface HomeworkReturn {
  lessons: readonly string[];
  title: string;
  /** Who asks; may be empty. */
  from: string;
  /** Homework that is a link, as its fragment; empty for the one of a guide's space. */
  fragment: string;
}

const KEY = 'feltfoot-way-back';

/** Keeps the way for when the lesson is open. A browser that keeps nothing has its own way back. */
export function keepWayBack(
  shelf: Pick<Storage, 'setItem'>,
  { lessons, title, from, fragment }: HomeworkReturn
): void {
  try {
    shelf.setItem(KEY, JSON.stringify({ lessons, title, from, fragment }));
  } catch {
    return;
  }
}

/** The way back from this lesson, or null: nobody's homework led here. */
export function wayBackFrom(
  shelf: Pick<Storage, 'getItem'>,
  lesson: string
): HomeworkReturn | null {
  try {
    const way: HomeworkReturn | null = JSON.parse(shelf.getItem(KEY) ?? 'null');
    return way?.lessons.includes(lesson) ? way : null;
  } catch {
    return null;
  }
}

export function forgetWayBack(shelf: Pick<Storage, 'removeItem'>): void {
  shelf.removeItem(KEY);
}

/** "Back to the homework of Reedmere Guiding" */
export function wayBackText({ from, title }: HomeworkReturn): string {
  return `Back to the homework ${from ? `of ${from}` : `“${title}”`}`;
}

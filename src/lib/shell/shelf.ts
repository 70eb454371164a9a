/** Where something small is kept: the part of the browser's Storage that is needed. */
export type Shelf = Pick<Storage, 'getItem' | 'setItem' | 'removeItem'>;

/** Version of the model's physics and numerics, and of how a try is marked: a change that moves results or marks moves this. */
export const MODEL_VERSION = '1.4.7';

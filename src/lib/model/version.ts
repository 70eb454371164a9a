/** Version of the model's physics and numerics: a change that moves results moves this. */
export const MODEL_VERSION = '1.4.3';

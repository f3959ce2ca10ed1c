/** Names that JavaScript itself looks up on any object. */
const languageNames = new Set([
  'then',
  'toJSON',
  '__esModule',
  'constructor',
  'prototype',
  'asymmetricMatch',
  'nodeType',
]);

/** Lets only what is there be used: anything the stand-in lacks is an error that names it, never a silent undefined. */
export function complete<Target extends object>(name: string, target: Target): Target {
  return new Proxy(target, {
    get(_target, key) {
      const value: unknown = Reflect.get(target, key, target);
      if (value === undefined && typeof key === 'string' && !(key in target) && !languageNames.has(key)) {
        throw new Error(`The stand-in for electron lacks ${name}.${key}.`);
      }
      // Bound, because private fields belong to the target, not to this wrapping.
      const isMethod = value instanceof Function && value.prototype === undefined;
      return isMethod ? (value.bind(target) as unknown) : value;
    },
  });
}

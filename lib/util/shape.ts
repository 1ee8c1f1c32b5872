/** Shapes of what comes from outside, checked once at the door. What nobody asked for is left behind. */

/** `In`: what may come, with what may be left out. `Out`: what it is from then on. */
export type Shape<Out = unknown, In = unknown> = {
  take: (value: unknown) => Out | typeof wrong
  /** Never there: it tells the type checker. */
  in?: In
}
export type Out<S> = S extends Shape<infer Taken, unknown> ? Taken : never
export type In<S> = S extends Shape<unknown, infer Given> ? Given : never

const wrong = Symbol('not of this shape')

/** Null: not of this shape. */
export function read<Taken>(shape: Shape<Taken>, value: unknown): { value: Taken } | null {
  const taken = shape.take(value)
  return taken === wrong ? null : { value: taken }
}

export const text = when((value): value is string => typeof value === 'string')
export const boolean = when((value): value is boolean => typeof value === 'boolean')
export const number = when((value): value is number => Number.isFinite(value))
export const integer = when((value): value is number => Number.isSafeInteger(value))
export const anything = when((_): _ is unknown => true)

export function matching(pattern: RegExp): Shape<string, string> {
  return when((value): value is string => typeof value === 'string' && pattern.test(value))
}

export function exactly<const Value>(wanted: Value): Shape<Value, Value> {
  return when((value): value is Value => value === wanted)
}

export function oneOf<const Value extends string>(values: readonly Value[]): Shape<Value, Value> {
  return when((value): value is Value => values.some((known) => known === value))
}

export function optional<S extends Shape>(shape: S): Shape<Out<S> | undefined, In<S> | undefined> {
  return { take: (value) => (value === undefined ? undefined : takenBy(shape, value)) }
}

export function nullable<S extends Shape>(shape: S): Shape<Out<S> | null, In<S> | null> {
  return { take: (value) => (value === null ? null : takenBy(shape, value)) }
}

/** For what was left out. */
export function withDefault<S extends Shape, Value extends Out<S>>(
  shape: S,
  value: Value
): Shape<Out<S>, In<S> | undefined> {
  return { take: (given) => (given === undefined ? value : takenBy(shape, given)) }
}

/** For whatever is not of the shape. */
export function otherwise<S extends Shape>(shape: S, value: Out<S>): Shape<Out<S>, unknown> {
  return { take: (given) => read(shape as Shape<Out<S>>, given)?.value ?? value }
}

export function union<Options extends readonly Shape[]>(
  options: readonly [...Options]
): Shape<Out<Options[number]>, In<Options[number]>> {
  return {
    take: (value) => {
      for (const option of options) {
        const taken = takenBy(option, value)
        if (taken !== wrong) return taken as Out<Options[number]>
      }
      return wrong
    },
  }
}

export function array<S extends Shape>(item: S): Shape<Out<S>[], In<S>[]> {
  return {
    take: (value) => {
      if (!Array.isArray(value)) return wrong
      const taken = value.map((one) => takenBy(item, one))
      return taken.includes(wrong) ? wrong : (taken as Out<S>[])
    },
  }
}

type Parts = readonly Shape[]

export function tuple<Given extends Parts>(
  parts: readonly [...Given]
): Shape<{ [At in keyof Given]: Out<Given[At]> }, { [At in keyof Given]: In<Given[At]> }> {
  return {
    take: (value) => {
      if (!Array.isArray(value) || value.length !== parts.length) return wrong
      const taken = parts.map((part, at) => takenBy(part, value[at]))
      // One for each part, in their order.
      return taken.includes(wrong) ? wrong : (taken as { [At in keyof Given]: Out<Given[At]> })
    },
  }
}

/** Keys of a few words need not all be there. */
type Entries<Key extends string, Value> = string extends Key
  ? Record<Key, Value>
  : Partial<Record<Key, Value>>

export function record<Key extends string, S extends Shape>(
  key: Shape<Key>,
  item: S
): Shape<Entries<Key, Out<S>>, Entries<Key, In<S>>> {
  return {
    take: (value) => {
      if (!isObject(value)) return wrong
      const taken = Object.entries(value).map(([name, one]) => [key.take(name), takenBy(item, one)])
      if (taken.some((entry) => entry.includes(wrong))) return wrong
      // Not by assignment: a key may be a word that every object knows.
      return Object.fromEntries(taken) as Entries<Key, Out<S>>
    },
  }
}

type Fields = Record<string, Shape>
type MayLackKey<Value> = unknown extends Value ? false : undefined extends Value ? true : false
type WithFields<Given> = {
  [Key in keyof Given as MayLackKey<Given[Key]> extends true ? never : Key]: Given[Key]
} & { [Key in keyof Given as MayLackKey<Given[Key]> extends true ? Key : never]?: Given[Key] }
type Flat<Given> = { [Key in keyof Given]: Given[Key] }
type OutOf<F extends Fields> = Flat<WithFields<{ [Key in keyof F]: Out<F[Key]> }>>
type InOf<F extends Fields> = Flat<WithFields<{ [Key in keyof F]: In<F[Key]> }>>

export type ObjectShape<F extends Fields> = Shape<OutOf<F>, InOf<F>> & { fields: F }

export function object<F extends Fields>(fields: F): ObjectShape<F> {
  const known = Object.entries(fields)
  return {
    fields,
    take: (value) => {
      if (!isObject(value)) return wrong
      const taken: Record<string, unknown> = {}
      for (const [key, shape] of known) {
        const part = takenBy(shape, Object.hasOwn(value, key) ? value[key] : undefined)
        if (part === wrong) return wrong
        if (part !== undefined) taken[key] = part
      }
      return taken as OutOf<F>
    },
  }
}

export function extend<F extends Fields, More extends Fields>(
  { fields }: ObjectShape<F>,
  more: More
): ObjectShape<Omit<F, keyof More> & More> {
  return object({ ...fields, ...more } as Omit<F, keyof More> & More)
}

type Optionals<F extends Fields> = {
  [Key in keyof F]: Shape<Out<F[Key]> | undefined, In<F[Key]> | undefined>
}

/** The same, and any of it may be left out. */
export function partial<F extends Fields>({ fields }: ObjectShape<F>): ObjectShape<Optionals<F>> {
  const loose = Object.entries(fields).map(([key, shape]) => [key, optional(shape)])
  return object(Object.fromEntries(loose) as Optionals<F>)
}

function when<Value>(is: (value: unknown) => value is Value): Shape<Value, Value> {
  return { take: (value) => (is(value) ? value : wrong) }
}

/** A shape gives what its type says. */
function takenBy<S extends Shape>(shape: S, value: unknown): Out<S> | typeof wrong {
  return shape.take(value) as Out<S> | typeof wrong
}

function isObject(value: unknown): value is Record<string, unknown> {
  return typeof value === 'object' && value !== null && !Array.isArray(value)
}

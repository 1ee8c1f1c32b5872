import { describe, expect, expectTypeOf, test } from 'vitest'

import * as shape from '@/lib/util/shape'

const { integer, number, object, read, text } = shape

const person = object({
  name: text,
  phone: shape.optional(text),
  skills: shape.withDefault(shape.array(shape.oneOf(['ladder', 'hand_saw'])), []),
  guardian: shape.withDefault(shape.nullable(text), null),
})

describe('what is of a shape is taken', () => {
  test.each<[string, shape.Shape, unknown]>([
    ['words', text, ''],
    ['a number', number, -1.5],
    ['a whole number', integer, 7],
    ['a truth', shape.boolean, false],
    ['anything', shape.anything, { whatever: [] }],
    ['one of some words', shape.oneOf(['low', 'high']), 'high'],
    ['exactly this', shape.exactly(true), true],
    ['words like these', shape.matching(/^[a-z]+$/), 'abc'],
    ['nothing', shape.nullable(text), null],
    ['a list', shape.array(number), [1, 2]],
    ['a few in order', shape.tuple([text, number]), ['a', 1]],
    ['a record', shape.record(text, number), { a: 1 }],
    ['either', shape.union([text, number]), 4],
  ])('%s', (_, known, value) => {
    expect(read(known, value)).toEqual({ value })
  })
})

describe('what is not is not', () => {
  test.each<[string, shape.Shape, unknown]>([
    ['a number for words', text, 1],
    ['words for a number', number, '1'],
    ['no number', number, Number.NaN],
    ['an endless number', number, Number.POSITIVE_INFINITY],
    ['a part of a whole number', integer, 1.5],
    ['more than a number holds', integer, 2 ** 53],
    ['another word', shape.oneOf(['low', 'high']), 'toString'],
    ['something else', shape.exactly(true), 1],
    ['words unlike these', shape.matching(/^[a-z]+$/), 'abc1'],
    ['nothing', text, null],
    ['nothing where it may only be left out', shape.optional(text), null],
    ['left out where it may only be nothing', shape.nullable(text), undefined],
    ['a list with one wrong in it', shape.array(number), [1, '2']],
    ['a record for a list', shape.array(number), { 0: 1, length: 1 }],
    ['too few in order', shape.tuple([text, number]), ['a']],
    ['too many in order', shape.tuple([text, number]), ['a', 1, 2]],
    ['a list for a record', shape.record(text, number), [1]],
    ['a record with one wrong in it', shape.record(text, number), { a: 1, b: null }],
    ['a record with a wrong key', shape.record(shape.oneOf(['a']), number), { b: 1 }],
    ['neither', shape.union([text, number]), true],
    ['an object that lacks a field', person, { phone: '1' }],
    ['an object with a wrong field', person, { name: 'Ann', skills: ['sleeping'] }],
    ['a list for an object', object({ length: number }), []],
  ])('%s', (_, known, value) => {
    expect(read(known, value)).toBeNull()
  })
})

test('what was left out is filled in, and what nobody asked for is left behind', () => {
  expect(read(person, { name: 'Ann', phone: undefined, age: 40 })).toStrictEqual({
    value: { name: 'Ann', skills: [], guardian: null },
  })
})

test('what every object knows is not taken for a field', () => {
  expect(read(object({ toString: shape.optional(shape.anything) }), {})).toStrictEqual({
    value: {},
  })
})

test('a key that every object knows does no harm in a record', () => {
  const told: unknown = JSON.parse('{"__proto__": {"isLead": true}, "a": {}}')
  const known = read(shape.record(text, shape.anything), told)

  expect(Object.keys(known?.value ?? {})).toEqual(['__proto__', 'a'])
  expect(Reflect.get(known?.value ?? {}, 'isLead')).toBeUndefined()
})

test('something else stands for what is of no known shape', () => {
  const species = shape.otherwise(shape.oneOf(['apple', 'plum', 'other']), 'other')

  expect(['plum', 'quince', 7].map((told) => read(species, told)?.value)).toEqual([
    'plum',
    'other',
    'other',
  ])
})

test('the first of several that fits is taken', () => {
  const either = shape.union([object({ n: number, kind: text }), object({ n: number })])

  expect(read(either, { n: 1, kind: 'left' })).toEqual({ value: { n: 1, kind: 'left' } })
  expect(read(either, { n: 1, kind: 2 })).toEqual({ value: { n: 1 } })
})

test('a shape is extended, and another made in which all may be left out', () => {
  const lead = shape.extend(person, { name: shape.nullable(text), radio: integer })

  expect(read(lead, { name: null, radio: 3 })?.value).toMatchObject({ name: null, radio: 3 })
  expect(read(lead, { name: 'Ann' })).toBeNull()
  expect(read(shape.partial(object({ name: text })), {})).toEqual({ value: {} })
  expect(read(shape.partial(object({ name: text })), { name: 1 })).toBeNull()
})

test('the types say what may come and what it is then', () => {
  expectTypeOf<shape.In<typeof person>>().toEqualTypeOf<{
    name: string
    phone?: string | undefined
    skills?: ('ladder' | 'hand_saw')[] | undefined
    guardian?: string | null | undefined
  }>()
  expectTypeOf<shape.Out<typeof person>>().toEqualTypeOf<{
    name: string
    phone?: string | undefined
    skills: ('ladder' | 'hand_saw')[]
    guardian: string | null
  }>()
})

/** What the commands about weather take. */

import * as shape from '@/lib/util/shape'

import { darkBecause, exceptionBecause, instant, measured, orNull, text } from './shapes'

export const argsOfWeather = {
  /** `at`: when it was measured, where that is not now. */
  write_weather: shape.object({ ...measured, at: orNull(instant) }),
  answer_weather: shape.object({}),
  make_exception: shape.object({
    what: text,
    because: shape.oneOf([...exceptionBecause, ...darkBecause]),
    note: orNull(text),
  }),
  end_exception: shape.object({ what: text }),
  /** Hours as supabase/README.md has them. */
  bring_in_forecast: shape.object({ hours: shape.array(shape.anything) }),
}

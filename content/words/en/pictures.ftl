# Words inside the pictures, and their alternative texts.

picture-pass = right
picture-adjust = adjust
picture-too-low = too low
picture-too-high = too high
picture-unclear = can't tell yet
picture-implausible = doesn't fit
picture-no-figure = no figure on the meter
picture-overload = OL
picture-off-scale = off this scale
picture-no-readings = no readings yet
picture-no-limits = no limits
picture-right-band = right: { $limits }
picture-aim = aim { $value } { $unit }
picture-meter = meter ±{ $value } { $unit }
picture-between = { $low } to { $high } { $unit }
picture-at-least = { $low } { $unit } or more
picture-at-most = { $high } { $unit } or less
picture-amount-turn = { $count ->
    [one] { $amount } turn
   *[other] { $amount } turns
}
picture-amount-click = { $count ->
    [one] { $amount } click
   *[other] { $amount } clicks
}
picture-amount-nudge = { $count ->
    [one] { $amount } hair
   *[other] { $amount } hairs
}
picture-amount-mm = { $amount } mm
picture-way-in = in
picture-way-out = out
picture-way-clockwise = ↻
picture-way-counter-clockwise = ↺
picture-way-more = more
picture-way-less = less

gauge-alternative = { $label }: { $value }, { $result }. Limits: { $limits }.

approach-earlier = { $count } earlier
approach-alternative = { $label }: { $count ->
    [one] one reading, it is { $value }.
   *[other] { $count } readings in order, the last is { $value }.
}
approach-alternative-none = { $label }: no readings yet.

strip-hidden = { $count } earlier not shown
strip-alternative = { $title }: { $passed } of { $count } stages right.

sweep-closed = closed
sweep-open = wide open
sweep-up = opening
sweep-down = closing
sweep-drop-out = drop-out at { $where }
sweep-dead-spot = dead spot at { $where }
sweep-reversal = goes back at { $where }
sweep-no-return = doesn't come back
sweep-not-wide-open = not wide open
sweep-nothing = nothing found
sweep-alternative = { $label }: { $count } readings from closed to wide open and back; { $found }.

connector-title = Throttle sensor plug
connector-wire-unknown = wire colour not known
connector-red = RED lead
connector-black = BLACK lead
connector-pin = pin { $pin }
connector-signal = signal
connector-supply = supply
connector-ground = ground
connector-elsewhere = not into this plug
connector-wire = { $base } wire
connector-wire-striped = { $base } wire, { $stripe } stripe
connector-seen = Seen from the wire side: pins go in along the wires
connector-seen-latch-up = Seen from the wire side, latch on top
connector-seen-latch-down = Seen from the wire side, latch below
connector-colour-black = black
connector-colour-white = white
connector-colour-grey = grey
connector-colour-brown = brown
connector-colour-red = red
connector-colour-orange = orange
connector-colour-yellow = yellow
connector-colour-green = green
connector-colour-light-green = light green
connector-colour-blue = blue
connector-colour-light-blue = light blue
connector-colour-violet = violet
connector-colour-pink = pink
connector-alternative = { $title }, seen from the wire side. Red lead: { $red }. Black lead: { $black }.

part-name-sensor-body = Sensor body
part-name-upper-screw = Sensor, upper screw
part-name-lower-screw = Sensor, lower screw
part-name-idle-stop = Idle stop screw
part-name-fast-idle = Fast idle knob
part-name-cable = Throttle cable
part-name-chain-adjuster = Chain adjuster
part-name-preload-collar = Preload collar
part-amount = { $amount } { $way }
part-way-in = in
part-way-out = out
part-way-clockwise = clockwise
part-way-counter-clockwise = counter-clockwise
part-way-more = more play
part-way-less = less play
part-until = until the meter shows { $low } to { $high } { $unit }
part-raises = raises the reading
part-lowers = lowers the reading
part-seen-facing = as you face it
part-seen-below = it faces down: look up at it from below
part-factory-stop = The painted factory stop: never touch it
part-alternative = { $title }: { $move }.
part-alternative-where = { $title }. Where it is: { $where }.

causes-none = No cause fits the readings
causes-more = … { $count } more
causes-rest = { $count ->
    [one] one more, { $share }
   *[other] { $count } more, { $share } together
}
causes-alternative = { $count ->
    [one] One cause: { $name }, { $share }.
   *[other] { $count } causes, the likeliest { $name } with { $share }.
}

record-set = set
record-right-as-found = right as found
record-accepted = accepted
record-not-set = not set
record-accepted-by = accepted by { $name }
record-hidden = { $count } more values
record-no-values = no values
record-alternative = Record card. { $title }, { $machine }, { $date }: { $result }, { $count ->
    [one] one value,
   *[other] { $count } values,
} code { $code }.

workshop-nothing = nothing yet
workshop-of = { $stopped } of { $reached }
workshop-stops-note = dark end: stopped here
workshop-times-note = dot: the middle owner
workshop-minutes = { $minutes } min
workshop-hidden = { $count } more
workshop-alternative = { $title }: { $count ->
    [one] one row.
   *[other] { $count } rows.
}

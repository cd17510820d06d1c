# Words inside the pictures, and their alternative texts.

picture-pass = right
picture-adjust = adjust
picture-too-low = too low
picture-too-high = too high
picture-unclear = can’t tell yet
picture-implausible = doesn’t fit
picture-no-figure = no figure on the meter
picture-overload = OL
picture-off-scale = off this scale
picture-no-readings = no readings yet
picture-no-limits = no limits
picture-right-band = right: { $limits }
picture-aim = aim { $value } { $unit }
picture-meter = meter ±{ $value } { $unit }
picture-between = { $low } to { $high } { $unit }
picture-at-least = { $low } { $unit } or more
picture-at-most = { $high } { $unit } or less
picture-amount-turn = { $count ->
    [one] { $amount } turn
   *[other] { $amount } turns
}
picture-amount-click = { $count ->
    [one] { $amount } click
   *[other] { $amount } clicks
}
picture-amount-nudge = { $count ->
    [one] { $amount } nudge
   *[other] { $amount } nudges
}
picture-amount-mm = { $amount } mm
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
sweep-no-return = doesn’t come back
sweep-not-wide-open = not wide open
sweep-nothing = nothing found
sweep-alternative = { $label }: { $count } readings from closed to wide open and back; { $found }.

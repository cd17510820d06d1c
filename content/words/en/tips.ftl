# The tips for the workshop's channel, each under tip-<id>, and what the desk is told about them. $machine and $procedure may be used in a tip.

## In the channel

tip-closed-stop =
    Idle wanders, and the throttle sensor gets the blame? Find its baseline first.
    A reading only says something about the sensor when nothing holds the throttle plate open: idle stop and fast idle backed right off.
    We go through it with you, reading by reading. Where your maker's manual says otherwise, the manual is right.
tip-three-decimals =
    Before you measure a throttle sensor, look at your meter: does it show three decimals on a small voltage?
    With two, the last digit is as wide as the window you are aiming for. Choose the lower range, or borrow a better meter.
    Once it shows three, start here.
tip-bars-and-revs =
    Do the revs change when you turn the bars? Then stop the engine, and don't ride it like that: something pulls on the throttle.
    No sensor needs setting before the cable has its free play and runs free from lock to lock.
    We ask for that first, and measure after.
tips-start = Start
tips-withdrawn = This tip is withdrawn. Please don't go by it.

## At the desk

tips-none = There are no tips.
tips-how = "tips NAME" shows one.
tips-status = { $id }: { $posted }, { $comes }.
tips-never-posted = not posted yet
tips-posted = posted { $when }
tips-comes = comes not before { $when }
tips-comes-never = does not come by itself
tips-stays-away = withdrawn
tips-gone = no longer in the content
tips-unknown = I know no tip "{ $id }".
tips-known = There are: { $tips }.
tips-as-it-stands = { $text }
tips-no-channel = No channel for tips is set. Whoever runs the program can set one.
tips-rests = It rests until { $when }.
tips-quiet = Quiet hours: nothing is posted before { $when }.
tips-may-post = To post it now: press, or write "tips post { $id }".
tips-may-correct = The channel reads otherwise. To correct it there: press, or write "tips correct { $id }".
tips-may-withdraw = To withdraw it: press, or write "tips withdraw { $id }".
tips-button-post = Post it
tips-button-correct = Correct it
tips-button-withdraw = Withdraw it
tips-did-post = { $name } sends "{ $id }" to the channel.
tips-did-correct = { $name } corrects "{ $id }" in the channel.
tips-did-withdraw = { $name } withdraws "{ $id }". It does not come again by itself.
tips-refused = The tip "{ $id }" did not get into the channel: { $why }
tips-partly-refused = The tip "{ $id }" did not get into every channel: { $why }
tips-change-refused = The tip "{ $id }" could not be changed in the channel: { $why }
tips-comes-again = It comes again, not before { $when }.

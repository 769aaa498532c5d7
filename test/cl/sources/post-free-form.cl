$$ free form, small letters, continuation, unit before the number, feeds behind the point
partno post of the wind vane
units / mm
toolno / 4 , osetno , 14
cutter / 8, 1
spindl / rpm, 9000, $
         cclw
coolnt / mist , air   $$ both at once
rapid
goto / 20, 10, 25, 0, 0, 1
Rapid
Goto / 20, 10, 3.25
FedRat / mmpm, 240
godlta / -4.75                         $$ along the tool axis
goto / 35.125, 10, -1.5, 900           $$ the fourth number is a feed
goto / 35.125, $ x
       22.0005, $ y
       -1.5
goto / 20, 22.0005                     $$ z stays
goto / 20, 10, -1.5, 0, 0, 1, 450      $$ tool axis and feed
spindl / 8000, cclw
delay / 0.5
delay / 400, rev
godlta / 1, 0, 0
rapid
goto / 21, 10, 25
gohome
spindl / off
fini

/** The flange of `bolt-circle-job.ts` as somebody writes it at the machine: a subprogram for holes on a circle, loops, arithmetic. */
export const boltCircleProgram = `%
(SENSOR FLANGE)
o<hole-circle> sub
  (1 X, 2 Y, 3 RADIUS, 4 FIRST ANGLE, 5 HOLES)
  (6 DEPTH, 7 RETRACT, 8 FEED)
  #<hole>=0
  o101 while [#<hole> LT #5]
    #<angle>=[#4 + 360 * #<hole> / #5]
    G99 G81 X[#1 + #3 * COS[#<angle>]] Y[#2 + #3 * SIN[#<angle>]] Z[-#6] R#7 F#8
    #<hole>=[#<hole> + 1]
  o101 endwhile
  G80
o<hole-circle> endsub

#<_x0>=60
#<_y0>=45
G94 G17 G21 G40 G64 G90 G92.2 G80 M48
M5
G4 P60
M9
G53 G0 Z0
G49
T1 M6
G94 G17 G54 G64 G90
S4000 M3
G4 P20
G0 X[#<_x0> + 22.5 * COS[11]] Y[#<_y0> + 22.5 * SIN[11]]
G43 Z10 H1
o<hole-circle> call [#<_x0>] [#<_y0>] [22.5] [11] [8] [7] [2] [240]
G0 Z10
G53 G0 Z0
M9
M5
G4 P60
G49
T2 M6
G94 G17 G54 G64 G90
S12000 M3
G4 P20
G0 X[#<_x0> + 31.7] Y#<_y0>
G43 Z10 H2
G1 Z-1.5 F200
#<corner>=1
o102 do
  #1=[60 * #<corner>]
  G1 X[#<_x0> + 31.7 * COS[#1]] Y[#<_y0> + 31.7 * SIN[#1]] F600
  #<corner>=[#<corner> + 1]
o102 while [#<corner> LE 6]
G0 Z10
#<r>=12.3
#<a>=17
#<i>=[#<r> * COS[#<a>]]
#<j>=[#<r> * SIN[#<a>]]
#<x>=[#<_x0> + #<r> * COS[#<a> + 210]]
#<y>=[#<_y0> + #<r> * SIN[#<a> + 210]]
G0 X[#<_x0> + #<i>] Y[#<_y0> + #<j>]
G1 Z-1.5 F200
G3 X#<x> Y#<y> I-#<i> J-#<j> F600
G0 Z10
G53 G0 Z0
M9
M5
G4 P60
G49
M2
%
`;

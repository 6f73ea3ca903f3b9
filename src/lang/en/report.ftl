# Tables, drawings and the sheet.

stages = { $number ->
    [one] { $number } stage
   *[other] { $number } stages
}

/** The buyer has agreed with the inspector or the dealer that something of the car is looked at again. Both are SQL. */
export const lookAgreed = (vehicle: string, buyer: string): string => `EXISTS (
  SELECT 1 FROM release again WHERE again.vehicle_id = ${vehicle} AND again.buyer_id = ${buyer}
    AND again.state = 'looking-again')`;

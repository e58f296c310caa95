Console.WriteLine("studiobot");

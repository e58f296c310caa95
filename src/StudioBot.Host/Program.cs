using StudioBot.Host.Settings;
using StudioBot.Host.Verbs;

OwnersOnly.FromNowOn();
var place = Workplace.Here();
switch (CommandLine.Read(args))
{
    case CommandLine.Said(var verb, var said):
        return (int)await verb.Run(said, place, CancellationToken.None);
    case CommandLine.Misread(var why, var @try):
        place.Streams.Error.WriteLine($"{why}{Environment.NewLine}Try  {@try}");
        return (int)ExitCode.CommandLine;
    default:
        throw new InvalidOperationException("A command line that is neither read nor misread.");
}
